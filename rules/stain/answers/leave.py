"""Leave a stain."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a stain",
    problem="stained",
    fix="general.fixes.leave",
    why=(
        "From the third row it may not be seen, and a worker's shirt may have one. Keep the iron off it, in "
        "case somebody wants it out one day."
    ),
    source="common-practice",
    when=(),
    fires=(fires("leave a stain", problem("stained", "stain", "stain", "open")),),
    near=(near("another problem", name="button_missing"),),
)
