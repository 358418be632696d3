"""Hem in a patch over the holes."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Hem in a patch over the holes",
    problem="holes_open",
    fix="mending.fixes.hemmed_patch",
    why="Where the hole is in plain sight, a patch of the same cloth, hemmed in, is nearly lost in it.",
    source="UMA-PATCH",
    when=(),
    fires=(fires("hem in a patch over the holes", problem("holes_open", "snaps", "hardware", "mend")),),
    near=(near("another problem", name="rust_marks"),),
)
