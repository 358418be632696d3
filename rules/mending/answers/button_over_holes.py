"""Button over the holes."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Button over the holes",
    problem="holes_open",
    fix="mending.fixes.button_over",
    why="Metal mostly sat where something closes: a button there looks meant and goes on closing it.",
    source="common-practice",
    when=(),
    fires=(fires("button over the holes", problem("holes_open", "snaps", "hardware", "mend")),),
    near=(near("another problem", name="rust_marks"),),
)
