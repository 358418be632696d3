"""Turn it twice by 1/4 in."""

from advisor.core.work import Spread
from advisor.figures.formula import figure
from advisor.figures.hems import double_fold
from advisor.knowledge import Fix, Trouble, View, Work, plain
from advisor.operations.hem_plans import NARROW_FOLD, shorten


def work(trouble: Trouble, view: View) -> Work:
    fold = plain("fold", NARROW_FOLD, "OSU-L87")
    allowance = figure(double_fold, "allowance", fold=fold)
    how = (
        "Turn up {fold}, then {fold} again: together {allowance}. On a curve stitch the first fold before you turn it "
        "the second time."
    )
    sewing = ("Topstitch close to the upper fold, beginning at a side seam.", "straight", Spread(20, 30, 50))
    return shorten(trouble, view, allowance, fold, {"fold": fold}, how, sewing)


fix = Fix(
    title="Turn it twice by 1/4 in",
    why="A narrow hem has next to no fullness to lose, so it lies flat on a circle and on bias. An extension sheet "
    "gives 1/4 in or a rolled edge for circle skirts.",
    wrong_when="The skirt is straight or heavy: a narrow hem does not weigh it down and leaves nothing to let down.",
    source="OSU-L87",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=(
        "What is cut off cannot be let down again.",
        "Shortened by more than 3 in a skirt loses its line, says one page: then take the side seams in as well.",
    ),
    work=work,
)
