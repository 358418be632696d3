"""Shorten a long hem by a deeper one."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Shorten a long hem by a deeper one",
    problem="tail_long",
    fix="tail.fixes.wide_hem",
    why="What is too long comes off, and the hem has the weight to hang.",
    source="common-practice",
    when=(),
    fires=(fires("shorten a long hem by a deeper one", problem("tail_long", "tail", "body_hem", "hem", "2 in")),),
    near=(near("another problem", name="tail_short"),),
)
