"""Fuse a fallen hem."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Fuse a fallen hem",
    problem="hem_down",
    fix="hems.fixes.fuse_again",
    why="Nothing has to match, and it is done before the bell.",
    source="HSW-HEM",
    when=(),
    fires=(fires("as found", problem("hem_down", "leg", "leg_end", "finish")),),
    near=(near("another problem", name="press_due"),),
)
