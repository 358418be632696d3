"""A band set in below the waist seam, all round."""

from advisor.figures.fitting import rise_band
from advisor.figures.formula import figure
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.marks import up_to_mark
from advisor.operations.trunk import cut_rise_band, set_rise_band
from advisor.operations.waist import open_waist, press_waist, sew_waist


def work(trouble: Trouble, view: View) -> Work:
    seam, lower = view.one("waist_seam"), view.one("lower_part")
    half = figure(rise_band, "half", short=amount(trouble, "short"))
    depth = up_to_mark(half, view.tape, "depth")
    return work_of(
        (
            open_waist(view),
            cut_rise_band(view, trouble.place, seam, lower, depth),
            set_rise_band(view, trouble.place, seam, lower, depth),
            sew_waist(view),
            press_waist(view),
        ),
        half=half,
    )


fix = Fix(
    title="Set a band in below the waist seam",
    why="A band between waist seam and hips lengthens front and back alike. Legs and front opening get longer by its "
    "depth, which the hem and the closing must follow.",
    wrong_when="A line across the hips would show against a print or a stripe, or pockets hang from the waist seam.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=4,
    cautions=(
        "Wash the cloth of the band first, as the garment was washed: new cloth shrinks on old.",
        "Where a band at the waist is needed too, set one deeper band in for both, not two above each other.",
    ),
    work=work,
)
