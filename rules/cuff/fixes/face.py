"""The worn edge trimmed away and faced."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cuffs import face_cuffs


def work(trouble: Trouble, view: View) -> Work:
    return work_of(face_cuffs(view, trouble.place))


fix = Fix(
    title="Trim the worn edge and face it",
    why=(
        "The cuff is cut back by 1/4 in to sound cloth and its two edges are turned in toward each other. It "
        "looks as it was, a little narrower; the sleeve is 1/4 in shorter."
    ),
    wrong_when="The sleeve is short as it is, or the buttonhole lies close to the edge.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=("The sleeve loses 1/4 in: measure it first.",),
    work=work,
)
