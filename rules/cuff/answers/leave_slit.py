"""Leave a short slit."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a short slit",
    problem="slit_short",
    fix="general.fixes.leave",
    why=(
        "With wide cuffs the hand goes through all the same: try before the cuffs are sewn on for good. A "
        "tight one tears at the end of the slit."
    ),
    source="common-practice",
    when=(),
    fires=(fires("leave a short slit", problem("slit_short", "cuff", "cuff", "finish", "1/2 in")),),
    near=(near("another problem", name="too_long"),),
)
