"""Work the buttonhole again."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Work the buttonhole again",
    problem="buttonhole_misfit",
    fix="mending.fixes.do_over",
    why="It was sewn to the wrong size: unpicked and sewn again it comes right.",
    source="common-practice",
    when=(),
    fires=(
        fires(("work the buttonhole again"), problem("buttonhole_misfit", "snaps", "hardware", "finish", "1/4 in")),
    ),
    near=(near("another problem", name="flap_misset"),),
)
