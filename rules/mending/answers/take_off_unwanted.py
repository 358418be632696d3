"""Take off metal that is not wanted."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take off metal that is not wanted",
    problem="metal_unwanted",
    fix="mending.fixes.take_metal_off",
    why="It can come off, as long as every hole it leaves is closed.",
    source="common-practice",
    when=(),
    fires=(fires(("take off metal that is not wanted"), problem("metal_unwanted", "snaps", "hardware", "open")),),
    near=(near("another problem", name="metal_rusted"),),
)
