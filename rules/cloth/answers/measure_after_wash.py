"""Measure after the wash."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Measure after the wash",
    problem="unmeasured",
    fix="cloth.fixes.measure_again",
    why="The wash has changed it: only new measures count.",
    source="IKAT",
    when=(),
    fires=(fires("measure after the wash", problem("unmeasured", "cloth", "cloth", "finish")),),
    near=(near("another problem", name="unwashed"),),
)
