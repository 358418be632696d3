"""Leave a narrow body."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a narrow body",
    problem="body_narrow",
    fix="general.fixes.leave",
    why=(
        "Worn open over something else it need not close. Where it is to close and the seams hold nothing it "
        "is often not worth the hours: look for the next size."
    ),
    source="common-practice",
    when=(),
    fires=(fires("leave a narrow body", problem("body_narrow", "body", "body_width", "girth", "1 in")),),
    near=(near("another problem", name="body_wide"),),
)
