"""Sew a woven stay behind the thin places."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import cut_stay, put_stay


def work(trouble: Trouble, view: View) -> Work:
    return work_of((cut_stay(view), put_stay(view, "sew in")))


fix = Fix(
    title="Sew a woven stay behind the thin places",
    why="A second layer under the weak one takes the pull, and comes out again if it has to.",
    wrong_when="The cloth is so thin that stitches would pull through: then it is past mending.",
    source="MAKERP",
    difficulty=2,
    durability=4,
    visibility=2,
    work=work,
)
