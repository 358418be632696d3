"""Let wedges of another cloth into the sides."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let wedges of another cloth into the sides",
    problem="stride_short",
    fix="vent.fixes.godets_of_other_cloth",
    why="A wedge flashes only in the step: another cloth looks meant there.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "6 in wanting",
            problem("stride_short", "vent", "vent", "finish", "6 in"),
        ),
    ),
    near=(near("another problem", name="vent_short"),),
)
