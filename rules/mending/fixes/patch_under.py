"""A woven patch under the hole, edges zigzagged."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.mending import cut_patch, fused, is_weak, press_mend, sew_patch_under, stay_around


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    stay = (stay_around(view, place),) if is_weak(view, place) else ()
    press = press_mend(view, place, stayed=any(fused(op) for op in stay))
    return work_of((*stay, cut_patch(view, place), sew_patch_under(view, place), press))


fix = Fix(
    title="Put a patch under the hole and zigzag it down",
    why=(
        "A patch under the hole carries what the cut threads carried. It reaches 3/4 in beyond sound cloth on every "
        "side, not 3/4 in beyond the hole, so that its edge is sewn to cloth that holds."
    ),
    wrong_when="It must not be seen: the zigzag shows round the hole. A dense one perforates weak cloth.",
    source="SCHOOLSEW-P",
    difficulty=2,
    durability=4,
    visibility=3,
    cautions=("Weak cloth gets its stay first, and the zigzag is kept open.",),
    work=work,
)
