"""Turn up a hem of 1 1/2 in."""

from advisor.core.work import Spread
from advisor.figures.formula import figure
from advisor.figures.hems import single_turn
from advisor.knowledge import Fix, Trouble, View, Work, plain
from advisor.operations.hem_plans import CLEAN, FLARED, shorten


def work(trouble: Trouble, view: View) -> Work:
    depth, under = plain("depth", FLARED, "OSU-L87"), plain("under", CLEAN, "SINGER-HEM")
    allowance = figure(single_turn, "allowance", depth=depth, finish=under)
    how = "Turn the raw edge under {under} and stitch it, then turn up {depth}: together {allowance}."
    sewing = ("Sew it by hand with small slack stitches about 1/2 in apart.", "hand", Spread(30, 45, 75))
    return shorten(trouble, view, allowance, depth, {"under": under, "depth": depth}, how, sewing)


fix = Fix(
    title="Turn up a hem of 1 1/2 in",
    why="The edge is turned under 1/4 in and 1 1/2 in turned up, its fullness drawn up on an ease row and steamed "
    "away: an extension sheet says so for flared skirts, a handbook 1 1/2 to 2 in, a guild only 1/4 to 3/8 in where "
    "they are full.",
    wrong_when="It is cut in a full circle: then a narrow hem lies better.",
    source="OSU-L87",
    difficulty=3,
    durability=4,
    visibility=1,
    cautions=(
        "What is cut off cannot be let down again.",
        "Shortened by more than 3 in a skirt loses its line, says one page: then take the side seams in as well.",
    ),
    work=work,
)
