"""Hem a long lining again."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Hem a long lining again",
    problem="lining_long",
    fix="lining.fixes.hem_again",
    why="Cut to its new length it hangs free and thin, as it did.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "2 in too long",
            problem("lining_long", "lining", "lining", "finish", "2 in"),
        ),
    ),
    near=(near("another problem", name="vent_short"),),
)
