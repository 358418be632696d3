"""Tape the torn edges and sew the seam again."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import cut_tape, lay_tape, resew


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of((cut_tape(view, place), lay_tape(view, place), resew(view, place)))


fix = Fix(
    title="Tape the torn edges and sew the seam again",
    why="Strips of thin firm cloth go behind both torn edges, and the seam is sewn through them: it holds though the "
    "cloth beside it was gone.",
    wrong_when="The tear reaches further than 1 in from the seam: then it is a hole and wants a patch.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=(),
    work=work,
)
