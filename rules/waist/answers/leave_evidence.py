"""The pins may be trusted against the tape."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Go by the pins",
    problem="evidence_disagrees",
    fix="general.fixes.leave",
    why="Pins show this cloth on this body, so the work goes by them alone; the tape is not mixed in. If the pins "
    "were set behind your own back, they are the guess of the two.",
    source="common-practice",
    when=(),
    fires=(fires("1 in apart", problem("evidence_disagrees", "waist", "waist_seam", "open", "1 in")),),
    near=(near("the waist is low instead", name="waist_low"),),
)
