"""Leave loops and label off."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave loops and label off",
    problem="loops_off",
    fix="general.fixes.leave",
    why="Worn with suspenders or under a long waistcoat nobody misses them; the old stitches brush out of most cloth.",
    source="common-practice",
    when=(),
    fires=(fires("no belt is worn", problem("loops_off", "band", "waistband", "finish")),),
    near=(near("another problem", name="band_longer"),),
)
