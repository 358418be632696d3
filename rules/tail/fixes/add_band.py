"""A band sewn on below."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.tails import add_band


def work(trouble: Trouble, view: View) -> Work:
    return work_of(add_band(view, trouble.place, amount(trouble, "short")))


fix = Fix(
    title="Sew a band on below",
    why=(
        "A band in the curve of the edge, sewn along the old crease and hemmed. Tucked in nobody sees what "
        "cloth it is of; that is how tails were always pieced."
    ),
    wrong_when="It is worn outside the belt, where another cloth shows.",
    source="NZ1948",
    difficulty=2,
    durability=4,
    visibility=3,
    cautions=("Wash the cloth of the band first, as the garment was washed.",),
    work=work,
)
