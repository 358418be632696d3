"""Cover rust marks."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Cover rust marks",
    problem="rust_marks",
    fix="mending.fixes.cover_marks",
    why="Where no acid may go, the mark is hidden instead of taken out.",
    source="common-practice",
    when=(),
    fires=(fires("cover rust marks", problem("rust_marks", "snaps", "hardware", "mend")),),
    near=(near("another problem", name="holes_open"),),
)
