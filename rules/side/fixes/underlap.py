"""A strip behind the opening."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.side import cut_underlap, press_side, sew_underlap


def work(trouble: Trouble, view: View) -> Work:
    place, gape = trouble.place, amount(trouble, "gape")
    return work_of((cut_underlap(view, place, gape), sew_underlap(view, place, gape), press_side(view, place)))


fix = Fix(
    title="Set a flat strip behind the opening",
    why=(
        "A folded strip sewn to the back edge lies behind the opening and 1 in under the front edge. The opening "
        "may then stand open as it likes: what is beneath no longer shows, and a hand still gets through."
    ),
    wrong_when="The cloth is so thick that a third layer makes a ridge at the hip.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=("Tack its lower end only: sewn down along both edges it holds the opening shut.",),
    work=work,
)
