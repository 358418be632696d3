"""A high waist may be left."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a high waist",
    problem="waist_high",
    fix="general.fixes.leave",
    why="A seam a little above the waist can pass for the cut; what pulls at shoulder and crotch cannot, so try it "
    "sitting before you decide.",
    source="common-practice",
    when=(),
    fires=(fires("1 in high", problem("waist_high", "bodice", "upper_part", "level", "1 in")),),
    near=(near("it sits low", name="waist_low"),),
)
