"""Make a new lining by the old one."""

from advisor.core.model import Put
from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    cut = (
        "Take the old lining out, take it apart, press it, and cut the new one by it, with 1/2 in more at the "
        "sides where "
        "it gave, and a pleat at center back if it had one."
    )
    sewn = (
        "Sew it together, press, and set it in as the old one was: band, zipper and vent, by hand where it was "
        "by hand. "
        "Hem it 3/4 in above the edge of the garment."
    )
    ops = (
        mend(
            view,
            f"{place}.new",
            "cut",
            "cut",
            "table",
            (40, 60, 90),
            cut,
            "mend",
            Need("lining cloth, washed"),
            reversible=False,
            check="the new cloth was washed",
        ),
        mend(
            view,
            f"{place}.state",
            "renewed",
            "renew",
            "straight",
            (75, 120, 200),
            sewn,
            "mend",
            Need("thread to match"),
            given=(Put(f"{place}.new", "cut"),),
        ),
    )
    return work_of(ops)


fix = Fix(
    title="Make a new lining by the old one",
    why="The old lining, taken apart, is the pattern for the new. It comes out as it was, and the garment is "
    "good for years.",
    wrong_when="The garment is not worth a day of work.",
    source="SEWAHOLIC",
    difficulty=4,
    durability=5,
    visibility=1,
    cautions=("Wash the lining cloth first, or it shrinks inside the garment.",),
    work=work,
)
