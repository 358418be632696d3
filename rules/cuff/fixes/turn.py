"""The cuffs turned inside out."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cuffs import back_edge, open_cuffs, press_cuffs, turn_cuffs


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of((open_cuffs(view, place), back_edge(view, place), turn_cuffs(view, place), press_cuffs(view, place)))


fix = Fix(
    title="Turn the cuffs",
    why=(
        "The cuffs come off and go on again inside out: the whole side is outside, the worn edge mended "
        "inside. It is the collar's old trick, and the life of the sleeve goes on."
    ),
    wrong_when="The edge is worn through on both sides, or the lining of the cuff is another cloth.",
    source="CASTLE",
    difficulty=3,
    durability=3,
    visibility=1,
    cautions=("Put left and right apart when they are off.",),
    work=work,
)
