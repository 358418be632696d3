"""Strips set into the side seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.side import cut_side_strips, open_beside, press_side, set_side_strips


def work(trouble: Trouble, view: View) -> Work:
    place, gape = trouble.place, amount(trouble, "gape")
    ops = (cut_side_strips(view, place, gape), open_beside(view, place), set_side_strips(view, place, gape))
    return work_of((*ops, press_side(view, place)))


fix = Fix(
    title="Set strips into the side seams",
    why=(
        "Where the seams do not hold enough, a strip in each side seam gives the room that is wanting, widest at "
        "the opening and running to nothing above and below."
    ),
    wrong_when="The side seams are felled, or nothing matches after a wash.",
    source="common-practice",
    difficulty=4,
    durability=4,
    visibility=4,
    cautions=("Wash the cloth of the strips first, as the garment was washed.",),
    work=work,
)
