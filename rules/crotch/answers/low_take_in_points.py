"""Take a low crotch up at the inner seams."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take a low crotch up at the inner seams",
    problem="crotch_low",
    fix="crotch.fixes.take_in_points",
    why="A little comes up where the inner seams meet, and the waist stays closed.",
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
