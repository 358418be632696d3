"""Respace the buttons of a gaping front."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Respace the buttons of a gaping front",
    problem="front_gapes",
    fix="stand.fixes.respace",
    why="The row has no button at the fullest part: with one there the front lies shut by itself.",
    source="HB-BH",
    when=(),
    fires=(
        fires(
            "respace the buttons of a gaping front",
            problem("front_gapes", "stand", "button_stand", "closure", "1/2 in"),
        ),
    ),
    near=(near("another problem", name="button_missing"),),
)
