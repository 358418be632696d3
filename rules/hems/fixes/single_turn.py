"""Cut to length, overcast and turned once."""

from advisor.core.work import Spread
from advisor.figures.formula import figure
from advisor.figures.hems import single_turn
from advisor.knowledge import Fix, Trouble, View, Work, plain
from advisor.operations.hem_plans import SINGLE, shorten


def work(trouble: Trouble, view: View) -> Work:
    deep = SINGLE.get(trouble.role, SINGLE["sleeve_end"])
    depth = plain("depth", deep, "ASG-HEM" if trouble.role == "leg_end" else "common-practice")
    allowance = figure(single_turn, "allowance", depth=depth, finish=depth.value * 0)
    how = "Overcast the raw edge and turn up {depth}."
    sewing = ("Sew it by hand inside the overcast edge, or with a blind stitch.", "hand", Spread(20, 30, 45))
    return shorten(trouble, view, allowance, depth, {"depth": depth}, how, sewing)


fix = Fix(
    title="Overcast the edge and turn it once",
    why=(
        "One turn lies flattest: 1 1/4 in for trousers, which is the upper end for women's slacks, and 1 in at a "
        "sleeve. The raw edge is overcast and stays flat inside."
    ),
    wrong_when="The cloth frays through its overcasting, or the wrong side is seen when the cuff is turned back.",
    source="ASG-HEM",
    difficulty=2,
    durability=3,
    visibility=1,
    cautions=("What is cut off cannot be let down again.",),
    work=work,
)
