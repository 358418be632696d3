"""New metal of the same kind in the same holes, over a patch."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.mending import (
    back_hole,
    cut_patch,
    is_weak,
    set_metal,
    stay_around,
    take_metal_off,
)


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    stay = (stay_around(view, place),) if is_weak(view, place) else ()
    off, patch, back = take_metal_off(view, place), cut_patch(view, place), back_hole(view, place)
    return work_of((off, *stay, patch, back, set_metal(view, place)))


fix = Fix(
    title="Set new metal of the same kind in the same holes",
    why=(
        "The old parts come off, a patch goes behind every hole to give the new post something to hold, and new parts "
        "of the same size are set where the old ones were."
    ),
    wrong_when=(
        "The size cannot be matched: measure cap and stud, for sizes differ by maker. Or the costume should not show "
        "metal."
    ),
    source="TM203-419",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=(
        "Cut or pried metal flies: wear safety glasses, and turn the cutters away from the face.",
        "Try one on scraps first: a part set badly is cut out again, and the hole is larger.",
    ),
    work=work,
)
