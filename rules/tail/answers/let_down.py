"""Let a short hem down."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let a short hem down",
    problem="tail_short",
    fix="tail.fixes.let_down",
    why="What the hem holds comes down, and nothing is added.",
    source="common-practice",
    when=(),
    fires=(fires("let a short hem down", problem("tail_short", "tail", "body_hem", "hem", "1 in")),),
    near=(near("another problem", name="tail_long"),),
)
