"""Go by what was found on the body."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Go by what was found on the body",
    problem="body_evidence_disagrees",
    fix="general.fixes.leave",
    why=(
        "Pins and open edges show this cloth on this body; chest and room are a reckoning. The work goes by "
        "the first and never by the middle."
    ),
    source="common-practice",
    when=(),
    fires=(
        fires(
            "go by what was found on the body", problem("body_evidence_disagrees", "body", "body_width", "open", "1 in")
        ),
    ),
    near=(near("another problem", name="body_wide"),),
)
