"""The leaf left off: a standing band remains."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.collars import close_stand, open_leaf, press_collar


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of((open_leaf(view, place), close_stand(view, place), press_collar(view, place)))


fix = Fix(
    title="Take the leaf off and keep the stand",
    why=(
        "Without its leaf the stand is a collar of its own, plain and sound. A peasant, a clerk before his "
        "tie, a century earlier: the shirt plays them all."
    ),
    wrong_when="A tie is to be worn with it, or the stand is worn too.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=5,
    work=work,
)
