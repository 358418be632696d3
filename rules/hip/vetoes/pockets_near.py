"""Taking in the seat seam would bring the back pockets too near each other."""

from advisor.figures.seams import POCKETS_APART
from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait


def left(gap: Mm, amount: Mm) -> Mm:
    return max(gap - amount, Mm(0))


rule = Veto(
    title="The back pockets would come too near each other",
    fix=("hip.fixes.center_back", "hip.fixes.center_back_felled"),
    why="Taken in over the whole seat the seam brings the back pockets together by all it takes. A designer "
    "sets new pockets 1 1/2 to 2 1/2 in from the seam; taken in, 1 in is the usual floor, and some go down to 3/4 in.",
    source="JSTERN",
    when=(
        given("there are back pockets", Trait(role="back_pockets", slot="there", word="there", place=MATCH.pockets)),
        given(
            "the gap between them is known", Measure(role="back_pockets", slot="gap", place=MATCH.pockets, mm=MATCH.gap)
        ),
        such_that("the seam would leave less than 2 in", lambda gap, amount: left(gap, amount) < POCKETS_APART),
    ),
    reckons={"left": left},
    says="The seam takes {amount} between the back pockets: {gap} would become {left}. 2 in from edge to edge is the "
    "least, 1 in from each to the new seam.",
    fires=(
        fires(
            "2 in out between pockets 3 1/2 in apart",
            offered("hip_wide", "hip", "hip", "hip.fixes.center_back"),
            problem("hip_wide", "hip", "hip", "level", "2 in"),
            trait("back_pocket.there", "back_pockets", "there"),
            measure("back_pocket.gap", "back_pockets", "3 1/2 in"),
        ),
        fires(
            "2 in out between pockets 3 1/2 in apart; the other way",
            offered("hip_wide", "hip", "hip", "hip.fixes.center_back_felled"),
            problem("hip_wide", "hip", "hip", "level", "2 in"),
            trait("back_pocket.there", "back_pockets", "there"),
            measure("back_pocket.gap", "back_pockets", "3 1/2 in"),
        ),
    ),
    near=(
        near("another fix", fix="hip.fixes.side_seams"),
        near("exactly 2 in are left", at=3, mm=length("4 in")),
        near("no back pockets", at=2, word="none"),
        near_without("the gap is not known", at=3),
    ),
)
