"""An elastic casing over the waist seam: the length above it blouses over."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.levels import fill_casing, sew_casing


def work(trouble: Trouble, view: View) -> Work:
    seam = view.one("waist_seam")
    return work_of((sew_casing(view, seam), fill_casing(view, seam, trouble.place, amount(trouble, "blouse"))))


fix = Fix(
    title="Hold the waist seam up with an elastic casing",
    why="Elastic in a casing over the seam keeps it at the waist of the body. Nothing is cut, the trunk loses nothing, "
    "and it comes out again. A belt over the seam does the same for a day.",
    wrong_when="The garment should lie flat above the waist, under a jacket for one, or the cloth is stiff.",
    source="common-practice",
    difficulty=2,
    durability=3,
    visibility=3,
    cautions=("Elastic tires in the wash before the cloth does: leave the casing so that it can be changed.",),
    work=work,
)
