"""Bag unknown dust."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Bag unknown dust",
    problem="unknown_dust",
    fix="cloth.fixes.bag_and_ask",
    why="Until somebody has said what the dust is, it stays in a closed bag.",
    source="OSHA-PB",
    when=(),
    fires=(fires("bag unknown dust", problem("unknown_dust", "cloth", "cloth", "open")),),
    near=(near("another problem", name="moldy"),),
)
