"""Replace a band that is too long."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Replace a band that is too long",
    problem="band_longer",
    fix="edges.fixes.new_band",
    why="A new band needs no seam across it, and fits the edge as it is now.",
    source="common-practice",
    when=(),
    fires=(fires("2 in too long", problem("band_longer", "band", "waistband", "join", "2 in")),),
    near=(near("it is shorter", name="band_shorter"),),
)
