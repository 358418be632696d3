"""Bag it unshaken, and ask what the dust is."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cloth import bag


def work(trouble: Trouble, view: View) -> Work:
    return work_of((bag(view),))


fix = Fix(
    title="Bag it unshaken, and ask what the dust is",
    why="Old dust can hold asbestos or lead. In a bag it harms nobody, and those who know can test it.",
    wrong_when="You know for certain that it is plain dirt.",
    source="OSHA-PB",
    difficulty=1,
    durability=5,
    visibility=1,
    cautions=(
        "Follow the rules of the place for lead and asbestos: no shaking, no blowing, not with the family wash; "
        "whoever launders it is told in writing.",
    ),
    sews=False,
    work=work,
)
