"""The lining cut and hemmed again."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.skirts import FOLD, hem_lining


def work(trouble: Trouble, view: View) -> Work:
    long = amount(trouble, "long")
    if trouble.mm < FOLD:
        return Work({"long": long}, ())
    return work_of(hem_lining(view, trouble.place, long), long=long)


fix = Fix(
    title="Cut the lining and hem it again",
    why="The lining is cut shorter and turned twice by 1/4 in. It keeps the ease it needs: the hem of a lining never "
    "meets the hem of the skirt.",
    wrong_when="The skirt may be let down again for the next wearer.",
    source="common-practice",
    difficulty=2,
    durability=5,
    visibility=1,
    cautions=("What is cut off cannot be let down again.",),
    work=work,
)
