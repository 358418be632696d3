"""Air what is moldy."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Air what is moldy",
    problem="moldy",
    fix="cloth.fixes.air_outdoors",
    why="Dry and brushed outdoors it no longer spreads, and can be washed.",
    source="ILL-DAHL",
    when=(),
    fires=(fires("air what is moldy", problem("moldy", "cloth", "cloth", "open")),),
    near=(near("another problem", name="oil_soaked"),),
)
