"""Glue a patch behind a hole in leather."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Glue a patch behind a hole in leather",
    problem="worn_through",
    fix="wear.fixes.glue_patch",
    why="A hole in leather or coated cloth is glued, not sewn: every stitch would leave a hole of its own.",
    source="LEATHER",
    when=(given("the cloth is leather or coated", Trait(role="cloth", slot="kind", word="coated", place=MATCH.cloth)),),
    fires=(
        fires(
            "worn through",
            problem("worn_through", "worn", "worn_place", "mend"),
            trait("cloth.kind", "cloth", "coated"),
        ),
    ),
    near=(
        near("thin instead", name="worn_thin"),
        near("cotton", at=1, word="cotton"),
    ),
)
