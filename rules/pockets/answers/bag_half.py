"""Renew a worn bag."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Renew a worn bag",
    problem="pocket_holed",
    fix="pockets.fixes.half_bag",
    why="Cloth that is worn through by keys is thin all over: half of it new outlasts every patch.",
    source="LTA-POCKET",
    when=(),
    fires=(fires("as found", problem("pocket_holed", "pocket_bag", "pocket_bags", "mend")),),
    near=(near("another problem", name="press_due"),),
)
