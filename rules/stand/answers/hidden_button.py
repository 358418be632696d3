"""Hold a gaping front with a hidden button."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Hold a gaping front with a hidden button",
    problem="front_gapes",
    fix="stand.fixes.hidden_button",
    why="It lacks a fastening there, and one that cannot spring open is better.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "hold a gaping front with a hidden button",
            problem("front_gapes", "stand", "button_stand", "closure", "1/2 in"),
        ),
    ),
    near=(near("another problem", name="button_missing"),),
)
