"""Replace a band that is too short."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Replace a band that is too short",
    problem="band_shorter",
    fix="edges.fixes.new_band",
    why="A new band is cut to the edge as it is now, and nothing shows that the old one was short.",
    source="common-practice",
    when=(),
    fires=(fires("1 in too short", problem("band_shorter", "band", "waistband", "join", "1 in")),),
    near=(near("it is longer", name="band_longer"),),
)
