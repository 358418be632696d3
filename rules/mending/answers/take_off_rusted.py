"""Take off rusted metal."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take off rusted metal",
    problem="metal_rusted",
    fix="mending.fixes.take_metal_off",
    why=(
        "What is rusted cannot be cleaned in the cloth: it goes on rusting inside. Once it is off, marks and holes can "
        "be dealt with."
    ),
    source="common-practice",
    when=(),
    fires=(fires("take off rusted metal", problem("metal_rusted", "snaps", "hardware", "open")),),
    near=(near("another problem", name="metal_unwanted"),),
)
