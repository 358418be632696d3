"""Seam the waistband where a garment seam meets it."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.band_loops import take_off
from advisor.operations.bands import open_band, press_band, seam_band, sew_band


def work(trouble: Trouble, view: View) -> Work:
    excess = amount(trouble, "excess")
    band = trouble.place
    return work_of(
        (
            open_band(view, band),
            *take_off(view, band),
            seam_band(view, band, excess),
            sew_band(view, band),
            press_band(view, band),
        )
    )


fix = Fix(
    title="Seam the waistband at a garment seam",
    why=(
        "The band comes off and is seamed where a seam of the garment meets it, center back with center back. It "
        "loses exactly what the garment lost; the lap at the closing stays as it was."
    ),
    wrong_when=(
        "A print or a buckle sits just there, or the band is so stiff that a fourth thickness will not go "
        "under the needle."
    ),
    source="WARDREDUX",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("A body is eased to its band by 1/2 to 1 in: leave that ease as you found it.",),
    work=work,
)
