"""Thin pads that carry the shoulders out."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.shoulders import set_pads


def work(trouble: Trouble, view: View) -> Work:
    return work_of(set_pads(view, trouble.place, amount(trouble, "by")))


fix = Fix(
    title="Carry the shoulders out with thin pads",
    why=(
        "A thin pad reaches past the bone and carries what hangs over, up to about 1/2 in. Nothing of the "
        "garment is touched, and stage shoulders look the better for it."
    ),
    wrong_when="The cloth is so thin that a pad shows through, or the part must look slight.",
    source="common-practice",
    difficulty=1,
    durability=3,
    visibility=2,
    cautions=("Take them out before every wash.",),
    work=work,
)
