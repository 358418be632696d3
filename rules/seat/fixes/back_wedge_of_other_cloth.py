"""Set a wedge of another cloth into the top of the back."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.girth import with_waist_open
from advisor.operations.seat import cut_wedge, set_wedge


def work(trouble: Trouble, view: View) -> Work:
    seat, lower, deep = trouble.place, view.one("lower_part"), amount(trouble, "deep")
    ops = (cut_wedge(view, seat, deep, "washed firm cloth of like weight"), set_wedge(view, seat, lower, deep))
    return work_of(with_waist_open(view, ops))


fix = Fix(
    title="Set a wedge of another cloth into the top of the back",
    why="The band comes off at the back, and a wedge, deepest at center back and nothing at the sides, goes in below "
    "it like a yoke.",
    wrong_when="The wedge would show above a low belt, or pockets reach up to the band.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=4,
    cautions=("Wash the cloth of the wedge first, as the garment was washed.",),
    work=work,
)
