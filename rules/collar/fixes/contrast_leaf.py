"""Make a new collar of another cloth."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.collars import new_leaf, open_leaf, press_collar


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of(
        (
            open_leaf(view, place),
            *new_leaf(view, place, "white or contrasting shirting, washed"),
            press_collar(view, place),
        )
    )


fix = Fix(
    title="Make a new collar of another cloth",
    why=(
        "A new leaf in white or in a cloth that is meant to differ: an old way with shirts, and often finer "
        "than the first."
    ),
    wrong_when="The part must not look so well dressed, or cuffs of the old cloth would then look forgotten.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=4,
    cautions=("Wash it first, and try in water whether its color runs.",),
    work=work,
)
