"""Shorten the back below the band."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.girth import with_waist_open
from advisor.operations.seat import cut_back, mark_back


def work(trouble: Trouble, view: View) -> Work:
    seat, lower, up = trouble.place, view.one("lower_part"), amount(trouble, "up")
    return work_of((mark_back(view, seat, up), *with_waist_open(view, (cut_back(view, seat, lower, up),))))


fix = Fix(
    title="Shorten the back below the waistband",
    why="The band comes off at the back, a wedge is cut off the top, deepest at center back and nothing at the "
    "sides, and the band goes back.",
    wrong_when="She must bend and sit much in it: the length that droops standing is used up seated.",
    source="PETITMAIN",
    difficulty=3,
    durability=5,
    visibility=1,
    cautions=("What is cut off does not come back: sit and bend with the fold pinned.",),
    work=work,
)
