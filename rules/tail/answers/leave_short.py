"""Leave a short tail."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a short tail",
    problem="tail_short",
    fix="general.fixes.leave",
    why="Worn outside it need not stay in, and a cord tied over it holds it for an evening.",
    source="common-practice",
    when=(),
    fires=(fires("leave a short tail", problem("tail_short", "tail", "body_hem", "hem", "1 in")),),
    near=(near("another problem", name="tail_long"),),
)
