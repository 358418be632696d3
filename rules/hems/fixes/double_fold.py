"""Cut to length and turned twice by 1/2 in."""

from advisor.core.work import Spread
from advisor.figures.formula import figure
from advisor.figures.hems import double_fold
from advisor.knowledge import Fix, Trouble, View, Work
from advisor.operations.hem_plans import shorten
from advisor.operations.hems import turn_of


def work(trouble: Trouble, view: View) -> Work:
    fold = turn_of("fold", "1/2", "WHATALT")
    allowance = figure(double_fold, "allowance", fold=fold)
    how = "Turn up {fold}, then {fold} again: together {allowance}."
    sewing = ("Topstitch close to the upper fold, beginning at the inner seam.", "straight", Spread(10, 15, 25))
    return shorten(trouble, view, allowance, fold, {"fold": fold}, how, sewing)


fix = Fix(
    title="Turn it twice by 1/2 in",
    why=(
        "Two equal turns of 1/2 in shut the raw edge in and take 1 in of cloth. It is the hem of sleeves, and of "
        "jeans and work trousers, where it is topstitched."
    ),
    wrong_when="The cloth is thick, or the end is wide and should hang: a narrow hem does not weigh it down.",
    source="WHATALT",
    difficulty=2,
    durability=4,
    visibility=3,
    cautions=("What is cut off cannot be let down again.",),
    work=work,
)
