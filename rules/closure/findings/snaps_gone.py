"""The snaps that closed the opening were taken off, and nothing took their place."""

from advisor.knowledge import MATCH, Find, Joined, Trait, fires, given, near, near_without, such_that
from advisor.knowledge.examples import joined, length, one_of, trait

rule = Find(
    title="The snaps are off",
    problem="closure_missing",
    stage="closure",
    why="The holes may be mended, but mended cloth closes nothing: the row has to be set anew, or something else put "
    "there.",
    source="common-practice",
    when=(
        given(
            "it closed with snaps",
            Trait(role="front_opening", place=MATCH.place, slot="kind", word="snaps"),
        ),
        given("metal in the edge was taken off", Trait(role="hardware", place=MATCH.metal, slot="state", word="gone")),
        given("that metal sat in the edge", Trait(place=MATCH.metal, slot="part", word="edge")),
        given(
            "no button took its place",
            Trait(place=MATCH.metal, slot="holes", word=one_of("open", "backed", "patched", "hemmed", "darned")),
        ),
        given(
            "row and opening are measured",
            Joined(kind="closure", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        such_that("the row was as long as the opening", lambda over, slack: abs(over) <= slack),
    ),
    says="{place} closed with snaps, and they are off: nothing closes it.",
    fires=(
        fires(
            "rusted snaps taken off and the holes patched",
            trait("front.kind", "front_opening", "snaps"),
            trait("snaps.state", "hardware", "gone"),
            trait("snaps.part", "hardware", "edge"),
            trait("snaps.holes", "hardware", "patched"),
            joined("closure", ("front.closure", "front_opening"), ("front.opening", "front_opening"), "0 in"),
        ),
    ),
    near=(
        near("a zipper closes it", word="closed_end"),
        near("they are still on", at=1, word="rusted"),
        near("they sat on a pocket flap", at=2, word="flap"),
        near("buttons were put over the holes", at=3, word="buttoned"),
        near_without("nothing was measured", at=4),
        near("the row was too long besides, which is another matter", at=4, over_mm=length("1 in")),
    ),
)
