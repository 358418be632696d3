"""Measuring again answers pins and tape that disagree."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Measure again where pins and tape disagree",
    problem="evidence_disagrees",
    fix="waist.fixes.measure_again",
    why="One of the two numbers is wrong and nothing here can tell which; a few minutes now are cheaper than a seam "
    "sewn twice.",
    source="common-practice",
    when=(),
    fires=(fires("1 in apart", problem("evidence_disagrees", "waist", "waist_seam", "open", "1 in")),),
    near=(near("the waist is low instead", name="waist_low"),),
)
