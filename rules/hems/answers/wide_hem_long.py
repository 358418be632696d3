"""Turn a hem of 2 in up on a long leg."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Turn a hem of 2 in up on a long leg",
    problem="too_long",
    fix="hems.fixes.wide_hem",
    role="leg_end",
    why="The leg is cut where a hem of 2 in brings it to the length that is wanted, and keeps something to let down.",
    source="common-practice",
    when=(),
    fires=(fires("2 in too long", problem("too_long", "leg", "leg_end", "hem", "2 in")),),
    near=(
        near("too short", name="too_short"),
        near("the end of a sleeve", place="sleeve", role="sleeve_end"),
    ),
)
