"""Leave perished cloth."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave perished cloth",
    problem="perished",
    fix="general.fixes.leave",
    why=(
        "It is not worth starting: what is sewn today tears beside the seam tomorrow. Keep it as it is, for the box or "
        "for a scene where it only hangs."
    ),
    source="NEWDRESS-31",
    when=(),
    fires=(fires("leave perished cloth", problem("perished", "cloth", "cloth", "open")),),
    near=(near("another problem", name="thin"),),
)
