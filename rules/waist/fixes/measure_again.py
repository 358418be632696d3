"""Pin and measure again before anything is cut: new answers close the finding, no work on the garment does."""

from advisor.knowledge import Fix, nothing_to_do

fix = Fix(
    title="Pin and measure again",
    why="Pin with the garment on, closed and settled, and say whether a number is the depth of a fold or the cloth "
    "that goes: mixing the two doubles it. Measure the body over what is worn beneath, three times, and keep the "
    "middle one. Give both answers anew; they then agree, or show where the fault lies.",
    wrong_when="Both were taken twice already and the body changes through the day: then go by the pins.",
    source="common-practice",
    difficulty=1,
    durability=5,
    visibility=1,
    cautions=("Sew nothing at the waist until the two agree; baste, if it cannot wait.",),
    closes=False,
    work=nothing_to_do,
)
