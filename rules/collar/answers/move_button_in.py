"""Move the button of a loose collar."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Move the button of a loose collar",
    problem="collar_loose",
    fix="collar.fixes.move_button",
    why="The front laps over further and the collar comes to the neck.",
    source="common-practice",
    when=(),
    fires=(
        fires("move the button of a loose collar", problem("collar_loose", "collar", "collar", "closure", "3/8 in")),
    ),
    near=(near("another problem", name="collar_tight"),),
)
