"""Leave a frayed edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a frayed edge",
    problem="edge_frayed",
    fix="general.fixes.leave",
    why="On jeans and on tramps fray is wanted; a row of stitches above it stops it there.",
    source="common-practice",
    when=(),
    fires=(fires("as found", problem("edge_frayed", "leg", "leg_end", "finish")),),
    near=(near("another problem", name="press_due"),),
)
