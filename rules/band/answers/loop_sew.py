"""Sew a loop on again."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Sew a loop on again",
    problem="loop_off",
    fix="band.fixes.sew_loop",
    why="It came off at its stitches or took the cloth with it: either way it goes back over something firm.",
    source="LOOPMEND",
    when=(),
    fires=(fires("as found", problem("loop_off", "band", "waistband", "finish")),),
    near=(near("another problem", name="press_due"),),
)
