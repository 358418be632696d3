"""Taking in the center-back seam would bring the back pockets too near each other."""

from advisor.figures.seams import POCKETS_APART
from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait
from advisor.operations.girth import loss_at_pockets


def left(gap: Mm, below: Mm, loose: str, amount: Mm) -> Mm:
    return max(gap - loss_at_pockets(amount, below, loose), Mm(0))


def under(gap: Mm, below: Mm, loose: str, amount: Mm) -> bool:
    return left(gap, below, loose, amount) < POCKETS_APART


rule = Veto(
    title="The back pockets would come too near each other",
    fix=("girth.fixes.center_back", "girth.fixes.center_back_felled"),
    why="A center-back seam brings the back pockets together by what it takes at their level: all of it where it is "
    "taken in to the hip and below, less where it runs out above. A designer sets new "
    "pockets 1 1/2 to 2 1/2 in from the seam; taken in, 1 in is the usual floor, and some go down to 3/4 in.",
    source="JSTERN",
    when=(
        given(
            "the gap between the back pockets is known",
            Measure(role="back_pockets", slot="gap", place=MATCH.pockets, mm=MATCH.gap),
        ),
        given(
            "and how far down they sit",
            Measure(role="back_pockets", slot="below", place=MATCH.pockets, mm=MATCH.below),
        ),
        given(
            "and how far down it is loose",
            Trait(role="lower_part", slot="loose_to", place=MATCH.place, word=MATCH.loose),
        ),
        such_that("the seam would leave less than 2 in between them", under),
    ),
    reckons={"left": left, "loss": lambda below, loose, amount: loss_at_pockets(amount, below, loose)},
    says="The seam takes {loss} at the level of the back pockets, {below} down: {gap} between them would become "
    "{left}. 2 in from edge to edge is the least, 1 in from each to the new seam.",
    fires=(
        fires(
            "2 in out, 2 1/2 in between pockets 4 in down",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.center_back"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            measure("back_pocket.gap", "back_pockets", "2 1/2 in"),
            measure("back_pocket.below", "back_pockets", "4 in"),
            trait("trousers.loose_to", "lower_part", "high_hip"),
        ),
        fires(
            "taken in past the hip, all of it comes off",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.center_back"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            measure("back_pocket.gap", "back_pockets", "3 1/2 in"),
            measure("back_pocket.below", "back_pockets", "4 in"),
            trait("trousers.loose_to", "lower_part", "hip"),
        ),
        fires(
            "2 in out, 2 1/2 in between pockets 4 in down; the other way",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.center_back_felled"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            measure("back_pocket.gap", "back_pockets", "2 1/2 in"),
            measure("back_pocket.below", "back_pockets", "4 in"),
            trait("trousers.loose_to", "lower_part", "high_hip"),
        ),
    ),
    near=(
        near("another fix", fix="girth.fixes.back_darts"),
        near("exactly 2 in are left", at=2, mm=length("3 in")),
        near("pockets so low that the seam takes less there", at=3, mm=length("6 in")),
        near_without("no back pockets", at=2),
        near_without("nobody measured how far down they sit", at=3),
        near_without("nobody tried how far down it is loose", at=4),
    ),
)
