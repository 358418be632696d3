"""Half of the opening sewn up, the rest held at its middle."""

from advisor.core.work import Spread
from advisor.figures.formula import figure
from advisor.figures.seams import each_side
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.side import fasten, half_of, mark_fastenings, press_side, sew_half

HOW = "Sew the hook to the front edge, 1/8 in back from it, and the bar opposite, so that the edges just meet."
NEED = "hooks with straight bars, flat"


def work(trouble: Trouble, view: View) -> Work:
    place, gape = trouble.place, amount(trouble, "gape")
    half, rest = figure(each_side, "half", total=gape), half_of(view, place)
    hook = fasten(view, place, half, what="hook and bar", how=HOW, minutes=Spread(10, 15, 25), need=NEED, after="part")
    return work_of(
        (sew_half(view, place, half, rest), mark_fastenings(view, place, rest), hook, press_side(view, place))
    )


fix = Fix(
    title="Sew half of it up, hook the rest",
    why=(
        "Sewn up over half its length the opening stands open half as wide, since the edges bow the less the "
        "shorter they are. A hook and bar in the middle of what is left takes the other half."
    ),
    wrong_when="The whole length is needed, or the edge is stretched all along: then tape it.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("Measure a hand, or the widest part of the hips, against what stays open.",),
    work=work,
)
