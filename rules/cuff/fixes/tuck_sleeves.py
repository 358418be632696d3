"""A tuck round the upper sleeve."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.cuffs import tuck_sleeves


def work(trouble: Trouble, view: View) -> Work:
    return work_of(tuck_sleeves(view, trouble.place, amount(trouble, "long")))


fix = Fix(
    title="Take a tuck in the sleeve above the elbow",
    why=(
        "A fold round the sleeve above the elbow takes up what is too long, and leaves cuff and slit alone. "
        "It comes out again with one thread: good for a costume that changes arms."
    ),
    wrong_when="The arm is bare of a vest and the tuck must not show, or the cloth is so crisp that it stands out.",
    source="common-practice",
    difficulty=2,
    durability=3,
    visibility=4,
    work=work,
)
