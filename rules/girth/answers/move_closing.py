"""Setting the fastening of a band over answers a waist that is a little too wide."""

from advisor.knowledge import Answer, Trait, fires, given, near, near_with, near_without, problem, trait, unless

rule = Answer(
    title="Lap the band further over a wide waist",
    problem="too_wide",
    fix="girth.fixes.move_closing",
    role="lower_part",
    why="A band of its own ends in a lap, and what laps further no longer goes round the body: the shortest work there "
    "is for a little.",
    source="common-practice",
    when=(
        given("a band of its own closes the waist", Trait(role="waistband", slot="kind", word="separate")),
        unless("a part is sewn on above it", Trait(role="upper_part")),
    ),
    fires=(
        fires(
            "1/2 in too wide, under a band of its own",
            problem("too_wide", "trousers", "lower_part", "girth", "1/2 in"),
            trait("band.kind", "waistband", "separate"),
        ),
    ),
    near=(
        near("too narrow instead", name="too_narrow"),
        near("no band of its own", at=1, word="none"),
        near_without("nothing is known of a band", at=1),
        near_with("a bodice hangs above", trait("bodice.fold", "upper_part", "flat")),
    ),
)
