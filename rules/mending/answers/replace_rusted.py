"""Replace rusted metal."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Replace rusted metal",
    problem="metal_rusted",
    fix="mending.fixes.replace_metal",
    why="The fastening stays as it was meant, only with metal that does not rust.",
    source="common-practice",
    when=(),
    fires=(fires("replace rusted metal", problem("metal_rusted", "snaps", "hardware", "open")),),
    near=(near("another problem", name="metal_unwanted"),),
)
