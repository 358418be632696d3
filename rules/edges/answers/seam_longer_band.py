"""Seam a band that is too long."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Seam a band that is too long",
    problem="band_longer",
    fix="edges.fixes.seam_band",
    why="The band loses what the garment lost at the place where the garment lost it, so that seams meet.",
    source="WARDREDUX",
    when=(),
    fires=(fires("2 in too long", problem("band_longer", "band", "waistband", "join", "2 in")),),
    near=(near("it is shorter", name="band_shorter"),),
)
