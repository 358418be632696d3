"""Set a band into a short end."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set a band into a short end",
    problem="too_short",
    fix="hems.fixes.insert_band",
    why="What is wanting goes in above a cuff or an edge that stays.",
    source="common-practice",
    when=(),
    fires=(fires("1 in too short", problem("too_short", "leg", "leg_end", "hem", "1 in")),),
    near=(near("too long", name="too_long"),),
)
