"""Level an uneven edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Level an uneven edge",
    problem="hem_uneven",
    fix="hems.fixes.level_edge",
    why="Marked from the floor on the body and turned up anew, it hangs level where she stands in it.",
    source="NMSU-C314",
    when=(),
    fires=(
        fires(
            "hangs unevenly",
            problem("hem_uneven", "edge", "skirt_end", "finish"),
        ),
    ),
    near=(near("too long", name="too_long"),),
)
