"""Make new cuffs of another cloth."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cuffs import new_cuffs, open_cuffs, press_cuffs


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    return work_of(
        (
            open_cuffs(view, place),
            *new_cuffs(view, place, "white or contrasting shirting, washed"),
            press_cuffs(view, place),
        )
    )


fix = Fix(
    title="Make new cuffs of another cloth",
    why=(
        "New cuffs in white or in a cloth that is meant to differ; with a collar of the same they look as if "
        "they had come so."
    ),
    wrong_when="The part must not look so well dressed, or the old collar would then look forgotten.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=4,
    cautions=("Wash the cloth first, and work one buttonhole on scraps of the same layers.",),
    work=work,
)
