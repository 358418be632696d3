"""Take a tuck in a long lining."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take a tuck in a long lining",
    problem="lining_long",
    fix="lining.fixes.tuck",
    why="Ten minutes, and it can be let down again with the skirt.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "2 in too long",
            problem("lining_long", "lining", "lining", "finish", "2 in"),
        ),
    ),
    near=(near("another problem", name="vent_short"),),
)
