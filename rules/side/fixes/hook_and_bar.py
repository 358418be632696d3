"""Sew on hooks and bars."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.side import fasten, mark_fastenings

HOW = "Sew the hook to the front edge, 1/8 in back from it, and the bar opposite, so that the edges just meet."
NEED = "hooks with straight bars, flat"


def work(trouble: Trouble, view: View) -> Work:
    place, gape = trouble.place, amount(trouble, "gape")
    length = view.measure(f"{place}.length")
    closing = fasten(view, place, gape, what="hook and bar", how=HOW, minutes=Spread(10, 15, 25), need=NEED)
    return work_of((mark_fastenings(view, place, length), closing))


fix = Fix(
    title="Sew on hooks and bars",
    why="A hook and a straight bar hold edge to edge, flat and unseen, and open with one hand.",
    wrong_when="The edge is so loose that it bows between the hooks: then tape it first.",
    source="common-practice",
    difficulty=1,
    durability=3,
    visibility=2,
    cautions=("Hooks catch in knitwear worn beneath.",),
    work=work,
)
