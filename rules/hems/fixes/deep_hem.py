"""Turn up a hem of 2 1/2 in."""

from advisor.core.work import Spread
from advisor.figures.formula import figure
from advisor.figures.hems import single_turn
from advisor.knowledge import Fix, Trouble, View, Work, plain
from advisor.operations.hem_plans import CLEAN, DEEP, shorten


def work(trouble: Trouble, view: View) -> Work:
    depth, under = plain("depth", DEEP, "TX-L359"), plain("under", CLEAN, "SINGER-HEM")
    allowance = figure(single_turn, "allowance", depth=depth, finish=under)
    how = "Turn the raw edge under {under} and stitch it, then turn up {depth}: together {allowance}."
    sewing = ("Sew it by hand with small slack stitches about 1/2 in apart.", "hand", Spread(30, 45, 75))
    return shorten(trouble, view, allowance, depth, {"under": under, "depth": depth}, how, sewing)


fix = Fix(
    title="Turn up a hem of 2 1/2 in",
    why="The edge is turned under 1/4 in and 2 1/2 in turned up: the average of a rather straight skirt, says an "
    "extension sheet. It gives weight and leaves something to let down; a guild says 2 to 3 in, another sheet 2 in or "
    "less in heavy cloth and up to 4 in in sheer.",
    wrong_when="The skirt flares: the turned-up edge is then longer than where it lands.",
    source="TX-L359",
    difficulty=2,
    durability=4,
    visibility=1,
    cautions=(
        "What is cut off cannot be let down again.",
        "Shortened by more than 3 in a skirt loses its line, says one page: then take the side seams in as well.",
    ),
    work=work,
)
