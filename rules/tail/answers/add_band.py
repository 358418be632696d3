"""Piece a short tail."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Piece a short tail",
    problem="tail_short",
    fix="tail.fixes.add_band",
    why="A band gives whatever is short.",
    source="NZ1948",
    when=(),
    fires=(fires("piece a short tail", problem("tail_short", "tail", "body_hem", "hem", "1 in")),),
    near=(near("another problem", name="tail_long"),),
)
