"""Raise the waist seam to where the waist of the body is."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.levels import cut_new_waist, mark_new_waist
from advisor.operations.waist import open_waist, press_waist, sew_waist


def work(trouble: Trouble, view: View) -> Work:
    seam, raised = view.one("waist_seam"), amount(trouble, "raise")
    return work_of(
        (
            mark_new_waist(view, seam),
            open_waist(view),
            cut_new_waist(view, seam, trouble.place, raised),
            sew_waist(view),
            press_waist(view),
        )
    )


fix = Fix(
    title="Raise the waist seam",
    why="The seam comes off, the upper part is cut shorter, and the lower part is sewn on again higher. Everything "
    "that runs across the seam gets shorter by the same amount, and the trunk by twice that.",
    wrong_when="The trunk has no room to give: she must still be able to sit and bend in it.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=2,
    cautions=("A waist once cut higher cannot be let down again without an inset band.",),
    work=work,
)
