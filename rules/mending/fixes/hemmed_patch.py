"""A patch of matching cloth with its edges turned under, hemmed in by hand."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.mending import (
    cut_hemmed_patch,
    fused,
    hem_patch,
    is_weak,
    press_mend,
    stay_around,
    turn_patch,
)


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    stay = (stay_around(view, place),) if is_weak(view, place) else ()
    press = press_mend(view, place, stayed=any(fused(op) for op in stay))
    patch = cut_hemmed_patch(view, place), turn_patch(view, place), hem_patch(view, place)
    return work_of((*stay, *patch, press))


fix = Fix(
    title="Hem in a patch of matching cloth by hand",
    why=(
        "A patch cut with 1/4 in more all round, turned under and felled to the wrong side, with the edge of the hole "
        "hemmed down on it: no zigzag, no raw edge, and thread and pattern meet."
    ),
    wrong_when="The cloth is heavy: turned edges make a lump that wears through.",
    source="UMA-PATCH",
    difficulty=3,
    durability=4,
    visibility=2,
    work=work,
)
