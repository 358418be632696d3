"""Leave a missing button."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a missing button",
    problem="button_missing",
    fix="general.fixes.leave",
    why=(
        "At the very top or bottom it is not missed, and a safety pin behind gets one through an evening. "
        "Elsewhere the next button follows."
    ),
    source="common-practice",
    when=(),
    fires=(fires("leave a missing button", problem("button_missing", "stand", "button_stand", "mend")),),
    near=(near("another problem", name="front_gapes"),),
)
