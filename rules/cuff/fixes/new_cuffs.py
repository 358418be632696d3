"""Make new cuffs of matching cloth."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cuffs import new_cuffs, open_cuffs, press_cuffs


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of(
        (open_cuffs(view, place), *new_cuffs(view, place, "matching cloth, washed"), press_cuffs(view, place))
    )


fix = Fix(
    title="Make new cuffs of matching cloth",
    why="New cuffs are cut by the old and set on in their place. They outlast the sleeves.",
    wrong_when="The cloth has faded, and new cuffs would be darker than the sleeves.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=2,
    cautions=("Wash the cloth first, and work one buttonhole on scraps of the same layers.",),
    work=work,
)
