"""A lining comes down too near the edge of the garment."""

from advisor.knowledge import MATCH, Find, Joined, Mm, Trait, fires, given, near, near_without, such_that
from advisor.knowledge.examples import joined, length, trait

AS_FOUND = length("1/4 in")


def off(over: Mm, slack: Mm, hem: str, tuck: str) -> bool:
    """As found 1/2 to 1 in above the edge will do; what was sewn anew is held to 3/4 in."""
    return abs(over) > slack if hem == "sewn again" or tuck == "sewn" else over > AS_FOUND


rule = Find(
    title="Lining too long",
    problem="lining_long",
    stage="finish",
    why="A lining ends 1/2 to 1 in above the finished edge. Nearer it shows when she walks, and it pulls the hem of "
    "the garment under; a skirt that was shortened leaves it hanging out.",
    source="common-practice",
    when=(
        given(
            "the lining is held against the finished edge",
            Joined(kind="piece", role="lining", place=MATCH.place, over_mm=MATCH.over, slack_mm=MATCH.slack),
        ),
        given("its hem is as found or new", Trait(role="lining", place=MATCH.place, slot="hem", word=MATCH.hem)),
        given("and so is a tuck in it", Trait(role="lining", place=MATCH.place, slot="tuck", word=MATCH.tuck)),
        such_that("it is not where it should end", off),
    ),
    amount=lambda over: abs(over),
    says="{place} hangs {over} lower than it should: it ends 3/4 in above the edge of the garment when it is right.",
    fires=(
        fires(
            "a skirt shortened by 2 in",
            joined("piece", ("lining.reach", "lining"), ("edge.length", "skirt_end"), "2 in"),
            trait("lining.hem", "lining", "sewn"),
            trait("lining.tuck", "lining", "none"),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("1/4 in, which is still within 1/2 to 1 in", over_mm=length("1/4 in")),
        near("shorter than it might be", over_mm=-length("2 in")),
        near("another part is measured", role="lower_part"),
        near_without("nobody looked at its hem", at=1),
        near_without("nobody looked for a tuck", at=2),
    ),
)
