"""A seam a little out of the middle may be left."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a seam out of the middle",
    problem="seam_off_center",
    fix="general.fixes.leave",
    why="Up to 1/4 in is hardly seen between two pockets; more was sewn wrong and is better unpicked.",
    source="common-practice",
    when=(),
    fires=(fires("1/8 in out", problem("seam_off_center", "back_pocket", "back_pockets", "finish", "1/8 in")),),
    near=(near("another problem", name="pockets_near"),),
)
