"""Lengthen a tight collar with a loop."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Lengthen a tight collar with a loop",
    problem="collar_tight",
    fix="collar.fixes.extender",
    why="It needs no sewing on the shirt, and can serve the next one.",
    source="EHOW-EXT",
    when=(),
    fires=(
        fires("lengthen a tight collar with a loop", problem("collar_tight", "collar", "collar", "closure", "3/8 in")),
    ),
    near=(near("another problem", name="collar_loose"),),
)
