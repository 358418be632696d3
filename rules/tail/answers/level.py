"""Level an uneven edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Level an uneven edge",
    problem="tail_uneven",
    fix="tail.fixes.level",
    why="The lowest side comes up to the highest.",
    source="common-practice",
    when=(),
    fires=(fires("level an uneven edge", problem("tail_uneven", "tail", "body_hem", "hem", "3/4 in")),),
    near=(near("another problem", name="tail_long"),),
)
