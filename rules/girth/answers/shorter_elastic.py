"""Change the elastic of a wide waist."""

from advisor.knowledge import Answer, Trait, fires, given, near, near_with, problem, trait, unless

rule = Answer(
    title="Change the elastic of a wide waist",
    problem="too_wide",
    fix="girth.fixes.change_elastic",
    why="The casing is there; shorter elastic draws it in, and tired elastic goes out with the same work.",
    source="common-practice",
    when=(
        given("elastic draws it in", Trait(role="waistband", slot="kind", word="elastic")),
        unless("a part is sewn on above", Trait(role="upper_part", slot="fold")),
    ),
    fires=(
        fires(
            "1 in too wide",
            problem("too_wide", "trousers", "lower_part", "girth", "1 in"),
            trait("band.kind", "waistband", "elastic"),
        ),
    ),
    near=(
        near("too narrow instead", name="too_narrow"),
        near("a band of its own", at=1, word="separate"),
        near_with("a bodice hangs above", trait("bodice.fold", "upper_part", "flat")),
    ),
)
