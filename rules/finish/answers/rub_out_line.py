"""Rub out a line."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Rub out a line",
    problem="line_left_marked",
    fix="finish.fixes.rub_out_marks",
    why="Nothing is cut there any more: the mark only misleads.",
    source="common-practice",
    when=(),
    fires=(fires("rub out a line", problem("line_left_marked", "waist", "waist_seam", "finish")),),
    near=(near("another problem", name="press_due"),),
)
