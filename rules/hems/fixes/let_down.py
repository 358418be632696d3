"""The hem let down by what is short."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work
from advisor.operations.hem_plans import turn_whole


def work(trouble: Trouble, view: View) -> Work:
    sewing = (
        "Sew it by hand with small slack stitches about 1/2 in apart, or topstitch a narrow one.",
        "hand",
        Spread(20, 30, 45),
    )
    return turn_whole(trouble, view, sewing)


fix = Fix(
    title="Let the hem down",
    why=(
        "What is folded up inside comes down, and what is left is turned up again: never less than 1/2 in, which "
        "makes a narrow hem of twice 1/4 in."
    ),
    wrong_when=(
        "The old edge is worn through or faded, so that a line would run across the new length, or more than about "
        "1 in comes down: a facing then hangs better than so narrow a hem."
    ),
    source="NMSU-C314",
    difficulty=2,
    durability=4,
    visibility=3,
    cautions=(
        "Look at the old crease in daylight before you unpick all of it.",
        "White vinegar and steam take a crease out of easy-care cloth, after a trial inside.",
    ),
    work=work,
)
