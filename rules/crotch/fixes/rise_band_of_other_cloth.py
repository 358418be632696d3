"""Set a band of another cloth in below the waistband."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.crotch import cut_rise_band, set_rise_band
from advisor.operations.girth import with_waist_open


def work(trouble: Trouble, view: View) -> Work:
    crotch, lower, depth = trouble.place, view.one("lower_part"), amount(trouble, "depth")
    ops = (
        cut_rise_band(view, crotch, lower, depth, "washed firm cloth, meant to be seen"),
        set_rise_band(view, crotch, lower, depth),
    )
    return work_of(with_waist_open(view, ops))


fix = Fix(
    title="Set a band of another cloth in below the waistband",
    why="A band between garment and waistband, shaped like a yoke, lets crotch and legs come down by its depth. Hems "
    "and closing follow; under a shirt worn outside it is not seen.",
    wrong_when="It must look as it came, or front pockets hang from the waist seam.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=5,
    cautions=("Wash the cloth of the band first, as the garment was washed.",),
    work=work,
)
