"""Change the elastic of a narrow waist."""

from advisor.knowledge import Answer, Trait, fires, given, near, near_with, problem, trait, unless

rule = Answer(
    title="Change the elastic of a narrow waist",
    problem="too_narrow",
    fix="girth.fixes.change_elastic",
    why="The casing is there; longer elastic lets the waist out, as far as the cloth goes.",
    source="common-practice",
    when=(
        given("elastic draws it in", Trait(role="waistband", slot="kind", word="elastic")),
        unless("a part is sewn on above", Trait(role="upper_part", slot="fold")),
    ),
    fires=(
        fires(
            "1 in too narrow",
            problem("too_narrow", "trousers", "lower_part", "girth", "1 in"),
            trait("band.kind", "waistband", "elastic"),
        ),
    ),
    near=(
        near("too wide instead", name="too_wide"),
        near("a band of its own", at=1, word="separate"),
        near_with("a bodice hangs above", trait("bodice.fold", "upper_part", "flat")),
    ),
)
