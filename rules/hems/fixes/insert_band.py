"""A band set in above the cuff or the edge."""

from advisor.knowledge import Fix, Trouble, View, Work
from advisor.operations.hem_plans import insert_band


def work(trouble: Trouble, view: View) -> Work:
    return insert_band(trouble, view)


fix = Fix(
    title="Set a band in above the cuff or edge",
    why=(
        "The end stays as it is, cuff or worn edge, and a band goes in above it. Two seams take 1/2 in each where "
        "cloth is cut through."
    ),
    wrong_when="The garment must look as it came, or the band would fall across a slit or a knee.",
    source="common-practice",
    difficulty=4,
    durability=4,
    visibility=5,
    cautions=("Wash the cloth of the band first, as the garment was washed.",),
    work=work,
)
