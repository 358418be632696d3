"""Sew on snaps over a tab."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.side import fasten, mark_fastenings

HOW = (
    "Sew a tab of tape, 1 in long, behind one edge so that it reaches 1/2 in under the other; sew the ball to the "
    "edge and the socket to the tab."
)
NEED = "sew-on snaps and a little firm tape"


def work(trouble: Trouble, view: View) -> Work:
    place, gape = trouble.place, amount(trouble, "gape")
    length = view.measure(f"{place}.length")
    closing = fasten(view, place, gape, what="snap", how=HOW, minutes=Spread(15, 20, 30), need=NEED)
    return work_of((mark_fastenings(view, place, length), closing))


fix = Fix(
    title="Sew on snaps over a tab",
    why="A snap on a small tab closes at a touch and lies flatter than a button.",
    wrong_when="It takes a pull: a snap opens when she sits down. A hook holds where a snap will not.",
    source="common-practice",
    difficulty=2,
    durability=3,
    visibility=2,
    cautions=("On a child's garment pull at each one: a loose snap is swallowed.",),
    work=work,
)
