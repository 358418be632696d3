"""Set a band of another cloth in above a high crotch."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set a band of another cloth in above a high crotch",
    problem="crotch_high",
    fix="crotch.fixes.rise_band_of_other_cloth",
    why="Where nothing matches, a band that is plainly another cloth looks meant, and under a long shirt nobody sees "
    "it.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "1/2 in too high",
            problem("crotch_high", "crotch", "crotch", "level", "1/2 in"),
        ),
    ),
    near=(near("too low instead", name="crotch_low"),),
)
