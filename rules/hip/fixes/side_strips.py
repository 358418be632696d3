"""Let strips into both side seams over the hip."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.hips import strips_along_sides


def work(trouble: Trouble, view: View) -> Work:
    total = amount(trouble, "total")
    return work_of(
        strips_along_sides(view, trouble.place, view.one("lower_part"), total, "matching cloth, washed"), total=total
    )


fix = Fix(
    title="Let strips into both side seams over the hip",
    why="A strip in each side seam gives half of the amount at the hip and what the waist lacks at the top. Nothing "
    "of the garment is cut, and it can be taken out again.",
    wrong_when="The sides carry pockets, or the strips would be seen as a patch.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=4,
    cautions=("Wash the cloth of the strips first, as the garment was washed: new cloth shrinks on old.",),
    work=work,
)
