"""Letting the seam down answers a waist that sits a little high."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let a high waist down",
    problem="waist_high",
    fix="waist.fixes.let_down_seam",
    why="A small amount may lie in the allowances of the seam itself, half on each side of it.",
    source="common-practice",
    when=(),
    fires=(fires("1/4 in high", problem("waist_high", "bodice", "upper_part", "level", "1/4 in")),),
    near=(near("it sits low", name="waist_low"),),
)
