"""The hole closed, its button on top, a snap beneath."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import button_on_top


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of((button_on_top(place, view.word(f"{place}.hole")),))


fix = Fix(
    title="Close the hole, with a snap beneath and the button on top",
    why=(
        "From outside all looks as it was; it is the snap that closes. The quick way, and a quick change for the stage."
    ),
    wrong_when="Something pulls hard there: a small snap opens under strain.",
    source="common-practice",
    difficulty=1,
    durability=3,
    visibility=2,
    work=work,
)
