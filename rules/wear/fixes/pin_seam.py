"""Pin it from the inside for tonight."""

from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.worn import pin_seam


def work(trouble: Trouble, view: View) -> Work:
    return work_of((pin_seam(view, trouble.place),))


fix = Fix(
    title="Pin it from the inside for tonight",
    why="Small safety pins along the old line hold it closed for a wear.",
    wrong_when="A child wears it, or she sits on it.",
    source="common-practice",
    difficulty=1,
    durability=1,
    visibility=2,
    cautions=("Points away from the body, and none on anyone who lies or falls on it.",),
    work=work,
)
