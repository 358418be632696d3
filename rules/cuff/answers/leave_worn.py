"""Leave worn cuffs."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave worn cuffs",
    problem="cuff_worn",
    fix="general.fixes.leave",
    why=(
        "Turned back or rolled up they are not seen, and frayed cuffs tell of a hard life. Each wash opens "
        "them further."
    ),
    source="common-practice",
    when=(),
    fires=(fires("leave worn cuffs", problem("cuff_worn", "cuff", "cuff", "mend")),),
    near=(near("another problem", name="slit_short"),),
)
