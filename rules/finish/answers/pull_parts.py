"""Pull small parts."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Pull small parts",
    problem="small_parts",
    fix="finish.fixes.pull_small_parts",
    why="Whether they hold is found out in a minute, by pulling.",
    source="1501.4",
    when=(),
    fires=(fires("pull small parts", problem("small_parts", "wearer", "wearer", "finish")),),
    near=(near("another problem", name="press_due"),),
)
