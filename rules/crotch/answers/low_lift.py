"""Lift a low crotch at the waist."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Lift a low crotch at the waist",
    problem="crotch_low",
    fix="crotch.fixes.lift_at_waist",
    why="What is too deep comes off the top: the whole garment moves up, and the crotch seam is not touched.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "1 in too low",
            problem("crotch_low", "crotch", "crotch", "level", "1 in"),
        ),
    ),
    near=(near("too high instead", name="crotch_high"),),
)
