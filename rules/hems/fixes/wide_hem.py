"""Cut to length with a hem of 2 in."""

from advisor.core.work import Spread
from advisor.figures.formula import figure
from advisor.figures.hems import two_turns
from advisor.knowledge import Fix, Trouble, View, Work
from advisor.operations.hem_plans import shorten
from advisor.operations.hems import turn_of


def work(trouble: Trouble, view: View) -> Work:
    under = turn_of("under", "1/2", "common-practice")
    depth = turn_of("depth", "1 1/2", "common-practice")
    allowance = figure(two_turns, "allowance", under=under, depth=depth)
    how = "Turn the raw edge under {under}, then turn up {depth}: together {allowance}."
    sewing = (
        "Sew it by hand with small slack stitches about 1/2 in apart, or with a blind stitch.",
        "hand",
        Spread(20, 30, 45),
    )
    return shorten(trouble, view, allowance, depth, {"under": under, "depth": depth}, how, sewing)


fix = Fix(
    title="Turn up a hem of 2 in",
    why=(
        "1/2 in is turned under and 1 1/2 in turned up, 2 in in all. It gives a trouser leg weight and leaves "
        "something to let down. One guild says 2 in for men and 5/8 to 1 1/4 in for women, the alteration trade 2 "
        "and 1 1/2 in, a handbook 2 1/2 in while the shoe is not known."
    ),
    wrong_when=(
        "The leg is narrow and slanted, or a casual leg should show its stitching: there 1 to 1 1/2 in in two turns "
        "is usual."
    ),
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=1,
    cautions=("What is cut off cannot be let down again.",),
    work=work,
)
