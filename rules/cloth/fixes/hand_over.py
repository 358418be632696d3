"""Hand a protective garment over, unaltered."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import hand_over


def work(trouble: Trouble, view: View) -> Work:
    return work_of((hand_over(view),))


fix = Fix(
    title="Do not alter it: hand it to the maker or the safety officer",
    why=(
        "Whoever answers for its protection can say what may be done to it, with which cloth and thread, and whether "
        "it is still good. Here nothing on it is altered."
    ),
    wrong_when="It only looks like protective clothing and has no standard on its label: then say so, and begin again.",
    source="NFPA2113",
    difficulty=1,
    durability=5,
    visibility=1,
    sews=False,
    work=work,
)
