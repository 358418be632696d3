"""Something sewn over the stain."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stains import cover


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of((cover(place, view.word(f"{place}.kind")),))


fix = Fix(
    title="Cover it with a pocket, a badge or braid",
    why="What is sewn over it hides it at once, whatever it is of, and can come off again.",
    wrong_when=(
        "It sits where nothing could be meant, or something fresh: wash first, or moths find it under the cover."
    ),
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=4,
    work=work,
)
