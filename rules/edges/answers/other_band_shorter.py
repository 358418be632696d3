"""Replace a short band with another cloth."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Replace a short band with another cloth",
    problem="band_shorter",
    fix="edges.fixes.new_band_of_other_cloth",
    why="A band needs little cloth, and one of another cloth is as long as it is wanted.",
    source="common-practice",
    when=(),
    fires=(fires("1 in too short", problem("band_shorter", "band", "waistband", "join", "1 in")),),
    near=(near("it is longer", name="band_longer"),),
)
