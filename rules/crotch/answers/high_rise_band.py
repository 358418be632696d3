"""Set a band in above a high crotch."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set a band in above a high crotch",
    problem="crotch_high",
    fix="crotch.fixes.rise_band",
    why="A band below the waistband lets all that hangs from it come down by its depth.",
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
