"""Hold a gaping front with a snap."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Hold a gaping front with a snap",
    problem="front_gapes",
    fix="stand.fixes.hidden_snap",
    why="It only lacks a fastening there, and a snap is the least of them.",
    source="MYHANDMADE",
    when=(),
    fires=(
        fires("hold a gaping front with a snap", problem("front_gapes", "stand", "button_stand", "closure", "1/2 in")),
    ),
    near=(near("another problem", name="button_missing"),),
)
