"""Turned up whole, nothing cut."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work
from advisor.operations.hem_plans import turn_whole


def work(trouble: Trouble, view: View) -> Work:
    sewing = ("Sew it by hand with small slack stitches about 1/2 in apart.", "hand", Spread(20, 30, 45))
    return turn_whole(trouble, view, sewing)


fix = Fix(
    title="Turn all of it up and cut nothing",
    why=(
        "Everything below the new edge goes into the hem. Nothing is lost: it can be let down for the next wearer, "
        "or when a child has grown."
    ),
    wrong_when="The end is slanted, the cloth thick, or a deep hem would show as a shadow through it.",
    source="DANCINGTH",
    difficulty=2,
    durability=3,
    visibility=2,
    cautions=("The old crease stays to be seen when it is let down one day.",),
    work=work,
)
