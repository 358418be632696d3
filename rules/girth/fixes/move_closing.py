"""Take the waist in by setting the fastening of its band over."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.band_closing import move_closing


def work(trouble: Trouble, view: View) -> Work:
    return work_of((move_closing(view, trouble.place, amount(trouble, "total")),))


fix = Fix(
    title="Move the fastening of the waistband over",
    why="The bar or the button moves further from the end of the band, so that the band laps further and the waist "
    "comes in. No seam is opened, and an old place can be taken up again.",
    wrong_when="The back of the waist stands off while the front lies flat: a longer lap pulls the front aside and "
    "does nothing for the back.",
    source="common-practice",
    difficulty=1,
    durability=3,
    visibility=2,
    cautions=("The end of the lap now reaches further: tack it down if it stands off.",),
    work=work,
)
