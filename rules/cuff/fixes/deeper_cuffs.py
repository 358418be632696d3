"""New cuffs, deeper by what is short."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.cuffs import deeper_cuffs


def work(trouble: Trouble, view: View) -> Work:
    return work_of(deeper_cuffs(view, trouble.place, amount(trouble, "short")))


fix = Fix(
    title="Make new, deeper cuffs",
    why="New cuffs are as much deeper as the sleeve is short. Sleeve, slit and pleats stay as they are.",
    wrong_when="More than 1 1/2 in is wanting: a cuff over 4 in deep looks like a costume of its own.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=3,
    cautions=("Wash the cloth of the cuffs first, as the garment was washed.",),
    work=work,
)
