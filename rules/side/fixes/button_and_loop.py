"""Sew on buttons and loops."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.side import fasten, mark_fastenings

HOW = (
    "Sew a thread or cloth loop to the front edge, just long enough to pass the button, and the button opposite on "
    "a short shank."
)
NEED = "small buttons and buttonhole twist"


def work(trouble: Trouble, view: View) -> Work:
    place, gape = trouble.place, amount(trouble, "gape")
    length = view.measure(f"{place}.length")
    closing = fasten(view, place, gape, what="button and loop", how=HOW, minutes=Spread(15, 25, 40), need=NEED)
    return work_of((mark_fastenings(view, place, length), closing))


fix = Fix(
    title="Sew on buttons and loops",
    why="A button and a loop hold a pull without opening, and may be seen: they can repeat buttons the garment has.",
    wrong_when="Nothing may show at the side, or straps and belts catch there.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=4,
    cautions=("On a child's garment pull at each one: a loose button is swallowed.",),
    work=work,
)
