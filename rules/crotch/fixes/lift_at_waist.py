"""Take the garment up at its waist."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.crotch import cut_top, mark_top
from advisor.operations.girth import with_waist_open


def work(trouble: Trouble, view: View) -> Work:
    crotch, lower, up = trouble.place, view.one("lower_part"), amount(trouble, "up")
    return work_of((mark_top(view, crotch, up), *with_waist_open(view, (cut_top(view, crotch, lower, up),))))


fix = Fix(
    title="Take it up at the waist",
    why="The band comes off, the amount is cut off the top all round, and the band goes back. Legs and opening come "
    "up with it, and the top edge is then as wide as it was lower down: fitting the waist follows.",
    wrong_when="Front pockets hang from the waist seam, or the back is right and only the front is deep. Pockets "
    "come nearer the band by all of it.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=2,
    cautions=(
        "What is cut off the top does not come back: sit in it drawn up first.",
        "The zipper then runs past the top and is shortened there, before a stop is cut off.",
    ),
    work=work,
)
