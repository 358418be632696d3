"""Ease the upper edge onto the lower."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.edges import at_waist, ease_edge


def work(trouble: Trouble, view: View) -> Work:
    excess = amount(trouble, "excess")
    return work_of(at_waist(view, trouble.place, ease_edge(view, trouble.place, excess)))


fix = Fix(
    title="Ease the upper edge in",
    why=(
        "A little fullness shrinks into the shorter edge without a fold. How much depends on the cloth: soft wool "
        "takes 8 to 10 percent of the edge, cotton 4 to 5, close polyester 2 to 3, leather next to nothing."
    ),
    wrong_when=(
        "The cloth does not shrink under steam, or the fullness sits in one place: past what the cloth takes up it "
        "puckers."
    ),
    source="from-memory",
    difficulty=3,
    durability=4,
    visibility=1,
    cautions=("Try a hand's length on a scrap first: past the lower of the two figures it may pucker.",),
    work=work,
)
