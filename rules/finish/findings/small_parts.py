"""Small parts on a child's garment were not tested."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Small parts for a child",
    problem="small_parts",
    stage="finish",
    why=(
        "Buttons and children's clothes are exempt from the small parts law (16 CFR 1501.3), but a child chokes on a "
        "loose button all the same. What fits whole into the test cylinder of 16 CFR 1501.4 can be swallowed. A "
        "button cannot stay untried."
    ),
    source="1501.3",
    when=(
        given("a child wears it", Trait(role="wearer", place=MATCH.place, slot="age", word="child")),
        given(
            "nobody pulled at its small parts", Trait(place=MATCH.place, role="wearer", slot="parts", word="untested")
        ),
    ),
    says="A child wears it: every button, snap and slider must hold when it is pulled, for a loose one can be "
    "swallowed.",
    fires=(
        fires(
            "a child's costume",
            trait("wearer.age", "wearer", "child"),
            trait("wearer.parts", "wearer", "untested"),
        ),
    ),
    near=(near("an adult wears it", word="adult"), near("pulled and found fast", at=1, word="tested")),
)
