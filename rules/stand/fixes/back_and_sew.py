"""The tear backed, the button sewn on over it."""

from advisor.core.model import Put
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import back_button, sew_button, sew_lowest, take_lowest


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    backed = Put(f"{place}.behind", "backed")
    if view.word(f"{place}.spare") == "yes":
        return work_of((back_button(place), sew_button(place, "the button", (backed,))))
    bare = Put(f"{place}.lowest", "bare")
    sewn = sew_button(place, "the lowest button", (backed, bare))
    return work_of((back_button(place), take_lowest(place), sewn, sew_lowest(place)))


fix = Fix(
    title="Back the tear and sew the button on over it",
    why=(
        "A scrap of cloth behind the tear carries the button; the torn cloth only lies on it. Where no button "
        "matches, the lowest one serves and an odd one takes its place."
    ),
    wrong_when="The tear reaches past what the button hides, and must not be seen.",
    source="WHATALT-BTN",
    difficulty=2,
    durability=4,
    visibility=2,
    work=work,
)
