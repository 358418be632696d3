"""Move the button of a tight collar."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Move the button of a tight collar",
    problem="collar_tight",
    fix="collar.fixes.move_button",
    why="A little more room is there at once, and the collar closes as before.",
    source="common-practice",
    when=(),
    fires=(
        fires("move the button of a tight collar", problem("collar_tight", "collar", "collar", "closure", "3/8 in")),
    ),
    near=(near("another problem", name="collar_loose"),),
)
