"""Tried on and measured again: new answers close the finding."""

from advisor.knowledge import Fix, Trouble, View, Work, nothing_to_do


def work(trouble: Trouble, view: View) -> Work:
    return nothing_to_do(trouble, view)


fix = Fix(
    title="Try it on and measure again",
    why=(
        "Pin or measure with the garment closed and settled, and say whether a number is the depth of a fold "
        "or the cloth that goes. Measure the chest over what is worn beneath, three times, and keep the "
        "middle one. Ask too whether the room wanted is right for this wearer."
    ),
    wrong_when="Both were taken twice already: then go by what was found on the body.",
    source="common-practice",
    difficulty=1,
    durability=5,
    visibility=1,
    cautions=("Sew nothing at the sides until the two agree; baste, if it cannot wait.",),
    closes=False,
    work=work,
)
