"""Pinch a wide band between its loops."""

from advisor.knowledge import Answer, Trait, fires, given, near, near_with, problem, trait, unless

rule = Answer(
    title="Pinch a wide band between its loops",
    problem="too_wide",
    fix="girth.fixes.pinch_band",
    why="Two pinches at the back take a little in with a needle and thread, and nothing is opened.",
    source="MEANDER",
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
