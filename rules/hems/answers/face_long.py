"""Face a long end."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Face a long end",
    problem="too_long",
    fix="hems.fixes.face_hem",
    why="The end is cut nearly where it is to be, and a strip finishes it: good where it slants or is thick.",
    source="common-practice",
    when=(),
    fires=(fires("2 in too long", problem("too_long", "leg", "leg_end", "hem", "2 in")),),
    near=(near("too short", name="too_short"),),
)
