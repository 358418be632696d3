"""Stitch a fallen hem."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Stitch a fallen hem",
    problem="hem_down",
    fix="hems.fixes.sew_again_by_machine",
    why="Where the rest is stitched through, so is this.",
    source="common-practice",
    when=(),
    fires=(fires("as found", problem("hem_down", "leg", "leg_end", "finish")),),
    near=(near("another problem", name="press_due"),),
)
