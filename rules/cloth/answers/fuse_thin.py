"""Fuse a stay to thin cloth."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Fuse a stay to thin cloth",
    problem="thin",
    fix="cloth.fixes.fuse_stay",
    why="A fused stay holds thin threads together while the seam is opened and sewn.",
    source="MAKERP",
    when=(),
    fires=(fires("fuse a stay to thin cloth", problem("thin", "cloth", "cloth", "open")),),
    near=(near("another problem", name="perished"),),
)
