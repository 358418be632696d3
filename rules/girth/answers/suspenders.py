"""Hang a wide waist from suspenders."""

from advisor.knowledge import Answer, Trait, fires, given, near, near_with, problem, trait, unless

rule = Answer(
    title="Hang a wide waist from suspenders",
    problem="too_wide",
    fix="girth.fixes.suspenders",
    why="What hangs from the shoulders does not slip, however wide the waist: nothing is cut, and it is quickly "
    "shared between players.",
    source="common-practice",
    when=(
        given("a band of its own closes the waist", Trait(role="waistband", slot="kind", word="separate")),
        unless("a part is sewn on above", Trait(role="upper_part", slot="fold")),
    ),
    fires=(
        fires(
            "1 in too wide",
            problem("too_wide", "trousers", "lower_part", "girth", "1 in"),
            trait("band.kind", "waistband", "separate"),
        ),
    ),
    near=(
        near("too narrow instead", name="too_narrow"),
        near("an edge only turned in", at=1, word="none"),
        near_with("a bodice hangs above", trait("bodice.fold", "upper_part", "flat")),
    ),
)
