"""Sew a gaping front shut."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Sew a gaping front shut",
    problem="front_gapes",
    fix="stand.fixes.sew_shut",
    why="What is not opened need not open.",
    source="MAKEITBAKE",
    when=(),
    fires=(fires("sew a gaping front shut", problem("front_gapes", "stand", "button_stand", "closure", "1/2 in")),),
    near=(near("another problem", name="button_missing"),),
)
