"""Make the lower half of the bags new."""

from advisor.core.model import Put
from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    cut = (
        "Lay the bag out flat and cut its lower half straight off above the worn cloth. For each bag cut firm pocket "
        "cloth twice as wide as the bag and 1 in more, 4 to 6 in long."
    )
    sewn = (
        "Unpick the side of the bag a little, not up to the seam of the garment. Sew the cloth round the cut "
        "edge, right "
        "sides together, press the seam down, then close side and bottom, twice, and overcast. Fasten the bag to "
        "the seam "
        "where it was."
    )
    ops = (
        mend(
            view,
            f"{place}.half",
            "cut",
            "cut",
            "table",
            (8, 12, 20),
            cut,
            "mend",
            Need("firm pocket cloth"),
            reversible=False,
            check="only the bag lies under the scissors",
        ),
        mend(
            view,
            f"{place}.bag",
            "renewed",
            "renew",
            "straight",
            (20, 30, 50),
            sewn,
            "mend",
            Need("thread to match"),
            given=(Put(f"{place}.half", "cut"),),
        ),
    )
    return work_of(ops)


fix = Fix(
    title="Make the lower half of the bags new",
    why="The worn half is cut off straight and firm pocket cloth takes its place; the mouths and the seams of "
    "the garment stay as they are.",
    wrong_when="The bag is rotten up to its mouth: then the whole pocket comes out.",
    source="LTA-POCKET",
    difficulty=2,
    durability=5,
    visibility=1,
    cautions=("Mind that nothing of the garment lies under the scissors.",),
    work=work,
)
