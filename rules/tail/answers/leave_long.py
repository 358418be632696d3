"""Leave a long tail."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a long tail",
    problem="tail_long",
    fix="general.fixes.leave",
    why="Tucked in it is not seen, and it stays in the better when arms are lifted.",
    source="common-practice",
    when=(),
    fires=(fires("leave a long tail", problem("tail_long", "tail", "body_hem", "hem", "2 in")),),
    near=(near("another problem", name="tail_short"),),
)
