"""The fronts sewn to each other below."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.stands import sew_front_shut


def work(trouble: Trouble, view: View) -> Work:
    return work_of((sew_front_shut(trouble.place),))


fix = Fix(
    title="Sew the front shut and slip it over the head",
    why=(
        "From above the place that gapes down to the hem the fronts are sewn on each other; the buttons stay "
        "as ornament."
    ),
    wrong_when=(
        "The head does not pass through what is left open, or it must come off in the wings in a hurry. "
        "Dragged over the head it strains at the end of the opening."
    ),
    source="MAKEITBAKE",
    difficulty=1,
    durability=3,
    visibility=2,
    work=work,
)
