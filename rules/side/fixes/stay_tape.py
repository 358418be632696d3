"""The stretched edges drawn in to a tape."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.side import press_side, tape_edges


def work(trouble: Trouble, view: View) -> Work:
    place, gape = trouble.place, amount(trouble, "gape")
    return work_of((tape_edges(view, place, gape), press_side(view, place)))


fix = Fix(
    title="Tape the stretched edges",
    why=(
        "Tape as long as the opening is straight from end to end takes the stretch out of both edges and keeps it "
        "out. The opening stays as long as it was, and lies shut."
    ),
    wrong_when="The edge is not stretched: lying flat the opening shuts by itself, and the body pulls it open.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=1,
    cautions=("Shrink the tape first: it draws the edge up in the wash.",),
    work=work,
)
