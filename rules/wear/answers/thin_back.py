"""Back a thin place."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Back a thin place",
    problem="worn_thin",
    fix="wear.fixes.back_thin",
    why="A layer behind, sewn down in many rows, carries what the thin threads no longer can.",
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
