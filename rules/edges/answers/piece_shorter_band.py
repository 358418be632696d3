"""Piece a band that is too short."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Piece a band that is too short",
    problem="band_shorter",
    fix="edges.fixes.piece_band",
    why="The piece gives the band what the garment was let out by.",
    source="VICHANNAH",
    when=(),
    fires=(fires("1 in too short", problem("band_shorter", "band", "waistband", "join", "1 in")),),
    near=(near("it is longer", name="band_longer"),),
)
