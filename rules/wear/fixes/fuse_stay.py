"""Fuse a stay behind the thin place."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import close, cut_cover


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    says = (
        "Fuse the stay behind the thin place with a press cloth, at the heat tried on an inside seam, and let it cool "
        "flat. It comes loose in hot washes."
    )
    ops = (
        cut_cover(view, place, "stayed", "fusible woven stay"),
        close(view, place, "stayed", "fuse", says, "iron", Spread(5, 8, 15)),
    )
    return work_of(ops)


fix = Fix(
    title="Fuse a stay behind the thin place",
    why="A fusible woven stay holds the thin threads together until there is time to sew.",
    wrong_when="It is knelt on or sat on: it then comes loose at the edges within a few washes.",
    source="MAKERP",
    difficulty=1,
    durability=2,
    visibility=2,
    cautions=("Try it on an inside seam: glue strikes through thin cloth.",),
    work=work,
)
