"""The opening sewn up."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.side import press_side, sew_shut


def work(trouble: Trouble, view: View) -> Work:
    place, gape = trouble.place, amount(trouble, "gape")
    return work_of((sew_shut(view, place, gape), press_side(view, place)))


fix = Fix(
    title="Sew the opening shut",
    why=(
        "The opening becomes part of the side seam. Nothing can gape any more, and the side hangs as if it had "
        "never been open."
    ),
    wrong_when="The opening lets a hand through to what is worn beneath, or lets the hips in.",
    source="common-practice",
    difficulty=2,
    durability=5,
    visibility=1,
    cautions=("Try to get in and out of it with the opening pinned shut.",),
    work=work,
)
