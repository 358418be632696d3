"""Sew a fallen hem by hand."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Sew a fallen hem by hand",
    problem="hem_down",
    fix="hems.fixes.sew_again_by_hand",
    why="The cloth is whole and the fold is still in it.",
    source="common-practice",
    when=(),
    fires=(fires("as found", problem("hem_down", "leg", "leg_end", "finish")),),
    near=(near("another problem", name="press_due"),),
)
