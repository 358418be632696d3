"""Near pockets may be left."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave near pockets",
    problem="pockets_near",
    fix="general.fixes.leave",
    why="It is a matter of looks only. Down to 3/4 in from pocket to seam many do not mind; nearer, the seam can "
    "hardly be topstitched.",
    source="common-practice",
    when=(),
    fires=(fires("1/2 in too near", problem("pockets_near", "back_pocket", "back_pockets", "join", "1/2 in")),),
    near=(near("another problem", name="too_wide"),),
)
