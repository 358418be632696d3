"""Lower the waist with a band set into the waist seam."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.levels import cut_inset, set_inset
from advisor.operations.waist import open_waist, press_waist, sew_waist


def work(trouble: Trouble, view: View) -> Work:
    seam, depth = view.one("waist_seam"), amount(trouble, "depth")
    return work_of(
        (
            open_waist(view),
            cut_inset(view, seam, depth),
            set_inset(view, seam, trouble.place, depth),
            sew_waist(view),
            press_waist(view),
        )
    )


fix = Fix(
    title="Set a band into the waist seam",
    why="The seam is opened and a band as deep as the waist is too high goes in. Opening, legs and trunk get longer "
    "with it, the trunk by twice the depth.",
    wrong_when="A line across the waist would show against a print or a stripe that ran through.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=4,
    cautions=("Wash the cloth of the band first, as the garment was washed: new cloth shrinks on old.",),
    work=work,
)
