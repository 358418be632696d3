"""The cuff buttons moved in."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.cuffs import tighten_cuffs


def work(trouble: Trouble, view: View) -> Work:
    cuff = view.one("cuff")
    return work_of((tighten_cuffs(view, trouble.place, cuff, amount(trouble, "long")),))


fix = Fix(
    title="Move the cuff buttons in",
    why=(
        "A cuff that holds at the wrist keeps the sleeve from coming down, and what is too long blouses over "
        "it: so a shirt sleeve is meant to sit."
    ),
    wrong_when=(
        "The cuff sits at the wrist already, or more than 1 1/2 in is to be hidden: it then hangs over like a bag."
    ),
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=2,
    work=work,
)
