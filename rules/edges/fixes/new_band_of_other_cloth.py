"""Make the waistband new, of another cloth."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.band_loops import take_off
from advisor.operations.bands import cut_new_band, make_new_band, open_band, press_band, sew_band


def work(trouble: Trouble, view: View) -> Work:
    over, band = amount(trouble, "over"), trouble.place
    sign = -1 if trouble.problem == "band_longer" else 1
    cloth = "washed firm cloth, meant to be seen"
    ops = (cut_new_band(view, band, over, sign, cloth), make_new_band(view, band, over, sign))
    return work_of((open_band(view, band), *take_off(view, band), *ops, sew_band(view, band), press_band(view, band)))


fix = Fix(
    title="Cut a new waistband of another cloth",
    why=(
        "Where nothing matches, a band of a cloth that is plainly another looks meant, and fits the edge as it is now."
    ),
    wrong_when="The garment must look as it came, or the closing carries hardware that should stay.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=4,
    cautions=("Wash it first with the garment, or beside a white rag: dark cloth bleeds.",),
    work=work,
)
