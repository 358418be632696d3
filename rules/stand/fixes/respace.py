"""A new row of buttons, one at the fullest part."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import respace


def work(trouble: Trouble, view: View) -> Work:
    return work_of(respace(view, trouble.place, view.one("front_opening")))


fix = Fix(
    title="Space the buttons anew, one at the fullest part",
    why=(
        "One button goes to the fullest part, where the front pulls, and the others part what is left, 3 to 3 "
        "1/2 in apart. The old holes are closed, new ones worked."
    ),
    wrong_when="The closed holes would show: plain dark cloth shows them most, a print hides them.",
    source="HB-BH",
    difficulty=3,
    durability=5,
    visibility=3,
    cautions=(
        "Closed buttonholes stay to be felt, and often to be seen.",
        "Work one hole on scraps of the same layers first.",
    ),
    work=work,
)
