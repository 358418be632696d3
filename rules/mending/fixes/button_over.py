"""A button and a buttonhole where the metal sat."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.mending import back_hole, cut_patch, is_weak, stay_around
from advisor.operations.mending_parts import button_over


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    stay = (stay_around(view, place),) if is_weak(view, place) else ()
    return work_of((*stay, cut_patch(view, place), back_hole(view, place), *button_over(view, place)))


fix = Fix(
    title="Cover the holes with buttons and buttonholes",
    why=(
        "The hole of the upper layer goes into a worked buttonhole, the hole of the lower one disappears under its "
        "button; a patch behind each carries the pull. The place can still be opened."
    ),
    wrong_when="Buttons would look wrong there, or fingers that fasten them are stiff.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=4,
    cautions=("A buttonhole once cut stays: work one on scraps of the same layers first.",),
    work=work,
)
