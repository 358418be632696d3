"""Renew the flap with the holes."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Renew the flap with the holes",
    problem="holes_open",
    fix="mending.fixes.renew_flap",
    why="The hole sits in a part that comes off: a new part has no hole.",
    source="TM201-70",
    when=(),
    fires=(fires("renew the flap with the holes", problem("holes_open", "snaps", "hardware", "mend")),),
    near=(near("another problem", name="rust_marks"),),
)
