"""Leave a wide body."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a wide body",
    problem="body_wide",
    fix="general.fixes.leave",
    why=(
        "Much of a shirt is meant to be room: tucked in, belted or under a vest it may not be seen. A "
        "shirtmaker calls 4 in over the chest tapered."
    ),
    source="SHIRTBOOK-SIZE",
    when=(),
    fires=(fires("leave a wide body", problem("body_wide", "body", "body_width", "girth", "2 in")),),
    near=(near("another problem", name="body_narrow"),),
)
