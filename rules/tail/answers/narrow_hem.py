"""Shorten a long tail with a narrow hem."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Shorten a long tail with a narrow hem",
    problem="tail_long",
    fix="tail.fixes.narrow_hem",
    why="What is too long comes off, and the curve is kept.",
    source="common-practice",
    when=(),
    fires=(fires("shorten a long tail with a narrow hem", problem("tail_long", "tail", "body_hem", "hem", "2 in")),),
    near=(near("another problem", name="tail_short"),),
)
