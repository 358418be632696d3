"""Patch the holes."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Patch the holes",
    problem="holes_open",
    fix="mending.fixes.patch_under",
    why="A hole punched for metal needs backing larger than itself; a patch under it is the plainest.",
    source="SCHOOLSEW-P",
    when=(),
    fires=(fires("patch the holes", problem("holes_open", "snaps", "hardware", "mend")),),
    near=(near("another problem", name="rust_marks"),),
)
