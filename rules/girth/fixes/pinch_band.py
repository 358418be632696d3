"""Take the band in with two pinches at the back."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.marks import parts
from advisor.operations.waist_hung import pin_pinches, sew_pinches


def work(trouble: Trouble, view: View) -> Work:
    lower, total = trouble.place, amount(trouble, "total")
    draws = parts(total, 2, view.tape, "side")
    return work_of((pin_pinches(view, lower), *sew_pinches(view, lower, draws)), total=total)


fix = Fix(
    title="Pinch the band in at the back",
    why="A pinch on each half of the back goes through band and cloth and is sewn by hand. Quick, and out again in a "
    "minute; one page calls it right for small amounts only, 1/2 in to a pinch.",
    wrong_when="It is worn without a belt and seen from behind, or the cloth is so thick that the pinch is a lump.",
    source="MEANDER",
    difficulty=1,
    durability=2,
    visibility=4,
    cautions=("Sew through every layer, or the band rides up over the pinch.",),
    work=work,
)
