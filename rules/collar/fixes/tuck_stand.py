"""A tuck in the stand, under the leaf."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.collars import tuck_stand


def work(trouble: Trouble, view: View) -> Work:
    return work_of(tuck_stand(view, trouble.place, amount(trouble, "by")))


fix = Fix(
    title="Take a tuck in the stand at center back",
    why=("A small tuck in the stand draws the neck in at the back, where the leaf covers it, and comes out again."),
    wrong_when="There is no leaf to cover it, or the cloth is stiff with interfacing.",
    source="NEWDRESS-26",
    difficulty=2,
    durability=3,
    visibility=2,
    work=work,
)
