"""The leaf of the collar turned over."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.collars import back_fold, open_leaf, press_collar, turn_leaf


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of((open_leaf(view, place), back_fold(view, place), turn_leaf(view, place), press_collar(view, place)))


fix = Fix(
    title="Turn the collar",
    why=(
        "The leaf comes out of its seam and goes in again the other way up: the whole side lies on top and "
        "the mended fold beneath, where nobody looks. It is good for another year or so, and then for a new "
        "leaf."
    ),
    wrong_when=(
        "Both sides are worn, the underside is of another cloth, or it is cut smaller so that the collar curls."
    ),
    source="UNBOUGHT",
    difficulty=3,
    durability=3,
    visibility=1,
    cautions=("Unpick with patience: a slip of the ripper is on the fold for good.",),
    work=work,
)
