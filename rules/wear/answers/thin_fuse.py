"""Fuse a stay behind a thin place."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Fuse a stay behind a thin place",
    problem="worn_thin",
    fix="wear.fixes.fuse_stay",
    why="Where nothing pulls, an ironed-on stay is enough for a while.",
    source="MAKERP",
    when=(),
    fires=(
        fires(
            "worn thin",
            problem("worn_thin", "worn", "worn_place", "mend"),
        ),
    ),
    near=(near("worn through instead", name="worn_through"),),
)
