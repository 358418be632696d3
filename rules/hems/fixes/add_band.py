"""A band sewn on at the end."""

from advisor.knowledge import Fix, Trouble, View, Work
from advisor.operations.hem_plans import add_band


def work(trouble: Trouble, view: View) -> Work:
    return add_band(trouble, view)


fix = Fix(
    title="Sew a band on at the end",
    why=(
        "A folded band at the end gives as much length as is wanted. In cloth that matches it looks like a cuff, in "
        "another it looks meant."
    ),
    wrong_when="The garment must look as it came, or the band would drag on the floor and wear through first.",
    source="WILLOW",
    difficulty=3,
    durability=4,
    visibility=5,
    cautions=("Wash the cloth of the band first, as the garment was washed.",),
    work=work,
)
