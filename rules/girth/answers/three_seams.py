"""Three seams answer a waist that is too wide for the center back alone."""

from advisor.figures.seams import POCKETS_APART
from advisor.knowledge import MATCH, Answer, Measure, Mm, Trait, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, problem, trait
from advisor.operations.girth import loss_at_pockets
from advisor.operations.three_seams import center_bears

# What one center-back seam takes: SCL. About two sizes: NINEL. The least is common practice, no source.
MOST_ALONE, MOST, LEAST = length("3 in"), length("4 in"), length("1/2 in")


def too_much_for_one(gap: Mm, below: Mm, loose: str, amount: Mm) -> bool:
    return amount > MOST_ALONE or gap - loss_at_pockets(amount, below, loose) < POCKETS_APART


def worth_opening(gap: Mm, below: Mm, loose: str, amount: Mm) -> bool:
    return center_bears(gap, below, loose, amount) >= LEAST


rule = Answer(
    title="Share a wide waist over three seams",
    problem="too_wide",
    fix="girth.fixes.three_seams",
    why="The back pockets let the center back take only part of it; the two side seams take the rest, and each of the "
    "three moves little.",
    source="common-practice",
    when=(
        given("center-back seam opens", Trait(role="lower_part", slot="center_seam", word="plain", place=MATCH.place)),
        given("so do the sides", Trait(role="lower_part", slot="side_seam", word="plain", place=MATCH.place)),
        given(
            "how far down it is loose is known",
            Trait(role="lower_part", slot="loose_to", place=MATCH.place, word=MATCH.loose),
        ),
        given("the gap between the back pockets is known", Measure(role="back_pockets", slot="gap", mm=MATCH.gap)),
        given("and how far down they sit", Measure(role="back_pockets", slot="below", mm=MATCH.below)),
        such_that("it is loose below the waist too", lambda loose: loose != "waist"),
        such_that("the center back cannot take all of it", too_much_for_one),
        such_that("it can take 1/2 in, or opening it is not worth it", worth_opening),
        such_that("no more than 4 in goes, about two sizes", lambda amount: amount <= MOST),
    ),
    fires=(
        fires(
            "2 in out, 2 1/2 in between pockets 4 in down",
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("trousers.center_seam", "lower_part", "plain"),
            trait("trousers.side_seam", "lower_part", "plain"),
            trait("trousers.loose_to", "lower_part", "high_hip"),
            measure("back_pocket.gap", "back_pockets", "2 1/2 in"),
            measure("back_pocket.below", "back_pockets", "4 in"),
        ),
        fires(
            "3 1/2 in out, pockets far apart",
            problem("too_wide", "trousers", "lower_part", "girth", "3 1/2 in"),
            trait("trousers.center_seam", "lower_part", "plain"),
            trait("trousers.side_seam", "lower_part", "plain"),
            trait("trousers.loose_to", "lower_part", "hip"),
            measure("back_pocket.gap", "back_pockets", "8 in"),
            measure("back_pocket.below", "back_pockets", "4 in"),
        ),
    ),
    near=(
        near("too narrow instead", name="too_narrow"),
        near("a felled center back", at=1, word="felled"),
        near("something set into the sides", at=2, word="opening"),
        near("loose at the waist only", at=3, word="waist"),
        near("so far apart that the center back bears it all", at=4, mm=length("3 in")),
        near("so close that it bears next to nothing", at=4, mm=length("2 1/8 in")),
        near("past two sizes", mm=length("4 1/16 in")),
        near_without("nobody looked at the center back", at=1),
        near_without("nobody looked at the sides", at=2),
        near_without("nobody tried how far down it is loose", at=3),
        near_without("no back pockets", at=4),
        near_without("nobody measured how far down they sit", at=5),
    ),
)
