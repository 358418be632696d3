"""Leave a gaping front."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a gaping front",
    problem="front_gapes",
    fix="general.fixes.leave",
    why="With something of the same color beneath, or with the arms at rest, it is not seen.",
    source="common-practice",
    when=(),
    fires=(fires("leave a gaping front", problem("front_gapes", "stand", "button_stand", "closure", "1/2 in")),),
    near=(near("another problem", name="button_missing"),),
)
