"""An inset band answers a high waist."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Lower a high waist with a band",
    problem="waist_high",
    fix="waist.fixes.inset_band",
    why="What is too short above the seam cannot be cut longer; a band set between the two edges gives the length.",
    source="common-practice",
    when=(),
    fires=(fires("1 in high", problem("waist_high", "bodice", "upper_part", "level", "1 in")),),
    near=(near("it sits low", name="waist_low"),),
)
