"""Take the lining out."""

from dataclasses import replace

from advisor.core.model import Put
from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    cut = (
        "Unpick the lining from the band, the zipper and the vent, and close again what it was caught in. "
        "Overcast every "
        "raw edge inside that it hid. Keep it as a pattern."
    )
    return work_of(
        (
            replace(
                mend(
                    view, f"{place}.state", "out", "take out", "unpick", (25, 40, 70), cut, "mend", Need("seam ripper")
                ),
                effects=(Put(f"{place}.state", "out"), Put(f"{place}.there", "taken out")),
            ),
        )
    )


fix = Fix(
    title="Take the lining out",
    why="Without it the garment is lighter and one layer less to mend. A slip worn beneath does its work.",
    wrong_when="The cloth is thin, clings, scratches or bags at the seat, or its raw edges would show inside.",
    source="SEWAHOLIC",
    difficulty=2,
    durability=5,
    visibility=1,
    cautions=("The seams inside must be finished, and the outer cloth wears faster at the seat.",),
    work=work,
)
