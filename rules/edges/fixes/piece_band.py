"""Piece the waistband longer."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.band_loops import take_off
from advisor.operations.bands import cut_band_piece, open_band, press_band, set_band_piece, sew_band


def work(trouble: Trouble, view: View) -> Work:
    wanting = amount(trouble, "wanting")
    band = trouble.place
    return work_of(
        (
            open_band(view, band),
            *take_off(view, band),
            cut_band_piece(view, band, wanting),
            set_band_piece(view, band, wanting),
            sew_band(view, band),
            press_band(view, band),
        )
    )


fix = Fix(
    title="Piece the waistband longer",
    why=(
        "A piece is set into the band where a seam of the garment meets it, so that its seams look meant. The rest "
        "of the band stays."
    ),
    wrong_when="No cloth matches, or the piece would fall under the closing.",
    source="VICHANNAH",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=("Cutting the band through costs it 1/2 in on each side: the piece must show that too.",),
    work=work,
)
