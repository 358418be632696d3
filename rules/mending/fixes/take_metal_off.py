"""Take the metal off; the holes it leaves are dealt with next."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.mending import take_metal_off


def work(trouble: Trouble, view: View) -> Work:
    return work_of((take_metal_off(view, trouble.place),))


fix = Fix(
    title="Take the metal off",
    why=(
        "The posts are opened or cut and the parts lifted out. It leaves a hole at every one, which is closed next: "
        "patched, darned, buttoned over, or gone with the part it sat in."
    ),
    wrong_when="The metal is sound and does its work: what replaces it seldom holds better.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=(
        "Cut or pried metal flies: wear safety glasses, and turn the cutters away from the face.",
        "It cannot be put back: decide first what takes its place.",
    ),
    work=work,
)
