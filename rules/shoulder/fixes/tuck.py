"""A tuck down from each shoulder seam."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.shoulders import tuck_shoulders


def work(trouble: Trouble, view: View) -> Work:
    return work_of(tuck_shoulders(view, trouble.place, amount(trouble, "by")))


fix = Fix(
    title="Take a tuck in each shoulder",
    why=(
        "A tuck halfway along the shoulder draws the seam in to the bone, cuts nothing and comes out again. "
        "In front it reads as a detail, most of all with a second one beside it."
    ),
    wrong_when="There is a yoke across the shoulders, or the cloth is checked: the tuck then runs across it.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=4,
    work=work,
)
