"""Set the flap again."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set the flap again",
    problem="flap_misset",
    fix="mending.fixes.do_over",
    why="It was sewn to the wrong size: unpicked and sewn again it comes right.",
    source="common-practice",
    when=(),
    fires=(fires("set the flap again", problem("flap_misset", "snaps", "hardware", "finish", "1/4 in")),),
    near=(near("another problem", name="cover_misfit"),),
)
