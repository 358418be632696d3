"""Make the patch or darn again."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Make the patch or darn again",
    problem="cover_misfit",
    fix="mending.fixes.do_over",
    why="It was sewn to the wrong size: unpicked and sewn again it comes right.",
    source="common-practice",
    when=(),
    fires=(fires(("make the patch or darn again"), problem("cover_misfit", "snaps", "hardware", "finish", "1/4 in")),),
    near=(near("another problem", name="flap_misset"),),
)
