"""Leave metal that is not wanted."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave metal that is not wanted",
    problem="metal_unwanted",
    fix="general.fixes.leave",
    why="Sound metal does no harm, and a hole is worse than a snap nobody looks at.",
    source="common-practice",
    when=(),
    fires=(fires("leave metal that is not wanted", problem("metal_unwanted", "snaps", "hardware", "open")),),
    near=(near("another problem", name="metal_rusted"),),
)
