"""Make the waistband new."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.band_loops import take_off
from advisor.operations.bands import cut_new_band, make_new_band, open_band, press_band, sew_band


def work(trouble: Trouble, view: View) -> Work:
    over, band = amount(trouble, "over"), trouble.place
    sign = -1 if trouble.problem == "band_longer" else 1
    ops = (cut_new_band(view, band, over, sign, "matching cloth"), make_new_band(view, band, over, sign))
    return work_of((open_band(view, band), *take_off(view, band), *ops, sew_band(view, band), press_band(view, band)))


fix = Fix(
    title="Cut a new waistband",
    why=(
        "A new band is cut to the edge as it is now, with the lap and the allowances, and no seam or piece shows in it."
    ),
    wrong_when="The old band carries hardware that should stay, or there is little cloth.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=2,
    cautions=("Wash the cloth and the interfacing before you cut: a band that shrinks draws the waist in.",),
    work=work,
)
