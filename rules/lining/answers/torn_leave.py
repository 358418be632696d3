"""Leave a torn lining."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a torn lining",
    problem="lining_torn",
    fix="general.fixes.leave",
    why="It is not seen from outside; mind the heel in it on a stair.",
    source="common-practice",
    when=(),
    fires=(fires("as found", problem("lining_torn", "lining", "lining", "mend")),),
    near=(near("another problem", name="press_due"),),
)
