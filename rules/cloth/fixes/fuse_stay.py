"""Fuse a woven stay to the thin places."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import cut_stay, put_stay


def work(trouble: Trouble, view: View) -> Work:
    return work_of((cut_stay(view), put_stay(view, "fuse")))


fix = Fix(
    title="Fuse a woven stay to the thin places",
    why="A fused stay turns thin cloth and stay into one cloth that stands being unpicked and sewn.",
    wrong_when="The cloth is silk, leather, coated or has a pile, or may not be ironed.",
    source="MAKERP",
    difficulty=1,
    durability=3,
    visibility=2,
    cautions=("It cannot be taken off again: try it on a hidden place first.",),
    work=work,
)
