"""Darn the holes."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Darn the holes",
    problem="holes_open",
    fix="mending.fixes.darn",
    why="A small hole in sound cloth is woven shut, and nothing is added that shows an edge.",
    source="SCHOOLSEW-D",
    when=(),
    fires=(fires("darn the holes", problem("holes_open", "snaps", "hardware", "mend")),),
    near=(near("another problem", name="rust_marks"),),
)
