"""Pleat the upper edge onto the lower."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.edges import at_waist, pleat_edge


def work(trouble: Trouble, view: View) -> Work:
    excess = amount(trouble, "excess")
    return work_of(at_waist(view, trouble.place, pleat_edge(view, trouble.place, excess)))


fix = Fix(
    title="Fold the upper edge into pleats",
    why=(
        "Pleats take the spare width in flat folds, as many left as right and as many in every quarter, so that the "
        "side seams still meet. Each takes twice its depth; together they take the amount, no more and no less."
    ),
    wrong_when=(
        "The cloth is so thick that three layers and a seam will not go under the needle, or checks must run on "
        "unbroken."
    ),
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=("Sew a sample on the true number of layers: a pleat puts three under the seam.",),
    work=work,
)
