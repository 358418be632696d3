"""Turned-up cuffs let down, the leg cut, the cuffs turned up again."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work
from advisor.operations.hem_plans import shorten


def work(trouble: Trouble, view: View) -> Work:
    held = view.measure(f"{trouble.place}.turn_up")
    how = (
        "Turn all of the {turn_up} up as it was turned before: first the hem inside, then the cuff over it, the two "
        "folds of the old cuff set where they were from the new edge."
    )
    sewing = ("Sew the hem inside, then tack the cuff at both seams, out of sight.", "hand", Spread(25, 40, 60))
    return shorten(trouble, view, held, held, {"turn_up": held}, how, sewing)


fix = Fix(
    title="Turn the cuffs up again higher",
    why="The cuffs come down, what is too long is cut off, and all the cloth that was folded up is folded up again: "
    "cuffs as deep as before, higher.",
    wrong_when="The leg tapers: higher up it is wider, and the cuff stands off unless its seams are sewn slanting.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=(
        "What is cut off cannot be let down again.",
        "Press the old folds out with steam first, or two creases show.",
    ),
    work=work,
)
