"""The flap that carried the metal off, a new one made and set."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.mending import back_hole, cut_patch, fused, is_weak, press_mend, stay_around
from advisor.operations.mending_parts import new_flap


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    stay = (stay_around(view, place),) if is_weak(view, place) else ()
    press = press_mend(view, place, stayed=any(fused(op) for op in stay))
    patch = cut_patch(view, place, "hole left in the garment under a flap")
    return work_of((*stay, patch, back_hole(view, place), *new_flap(view, place), press))


fix = Fix(
    title="Take the flap off and make a new one",
    why=(
        "The holes go with the old flap. Those of the other half of each fastening stay in the garment under the flap, "
        "are patched first, and the new flap hides them."
    ),
    wrong_when="The cloth has faded: new cloth shows beside old. Then make both flaps new.",
    source="TM201-70",
    difficulty=3,
    durability=5,
    visibility=2,
    cautions=("Keep the pocket out of the stitching, or it is sewn shut.",),
    work=work,
)
