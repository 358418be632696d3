"""Iron a patch on."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import close, cut_cover


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    says = (
        "Trim loose threads, lay the piece over the hole from the inside and fuse it with a press cloth, at the heat "
        "of its own label if the garment's allows it. Let it cool flat. A row of stitches round its edge doubles its "
        "life."
    )
    ops = (
        cut_cover(view, place, "fused", "iron-on mending cloth"),
        close(view, place, "fused", "fuse", says, "iron", Spread(6, 10, 15)),
    )
    return work_of(ops)


fix = Fix(
    title="Iron a patch on",
    why="Mending cloth with glue is cut to reach 1/2 in past the weak cloth and ironed on: ten minutes, and it holds "
    "about a season of washes.",
    wrong_when="It is washed hot, bent at a knee, or the cloth takes no heat.",
    source="MAKERP",
    difficulty=1,
    durability=2,
    visibility=3,
    cautions=("Heat fixes stains and rust: wash first.",),
    work=work,
)
