"""Glue a patch over holes in leather."""

from advisor.knowledge import Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Glue a patch over holes in leather",
    problem="holes_open",
    fix="mending.fixes.glue_patch",
    why="Needle holes stay in this cloth: a patch glued behind the hole makes none.",
    source="LEATHER",
    when=(given("the cloth keeps every needle hole", Trait(role="cloth", slot="kind", word="coated")),),
    fires=(
        fires(
            "glue a patch over holes in leather",
            problem("holes_open", "snaps", "hardware", "mend"),
            trait("cloth.kind", "cloth", "coated"),
        ),
    ),
    near=(
        near("another problem", name="rust_marks"),
        near("cotton closes round a needle", at=1, word="cotton"),
    ),
)
