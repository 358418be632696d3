"""Try on and measure again."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Try on and measure again",
    problem="body_evidence_disagrees",
    fix="body.fixes.try_again",
    why="Two numbers for one width: one of them is wrong, and new answers show which.",
    source="common-practice",
    when=(),
    fires=(
        fires("try on and measure again", problem("body_evidence_disagrees", "body", "body_width", "open", "1 in")),
    ),
    near=(near("another problem", name="body_wide"),),
)
