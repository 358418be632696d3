"""The lowest button moved up, an odd one sewn in its place."""

from advisor.core.model import Put
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import sew_button, sew_lowest, take_lowest


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    bare = (Put(f"{place}.lowest", "bare"),)
    return work_of((take_lowest(place), sew_button(place, "the lowest button", bare), sew_lowest(place)))


fix = Fix(
    title="Take the lowest button and sew an odd one there",
    why=(
        "The lowest button is the same as the others and is tucked in: it fills the gap that shows, and an "
        "odd one takes its place below."
    ),
    wrong_when="The shirt is worn outside the belt, where the lowest is seen as well.",
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=1,
    work=work,
)
