"""A cord at the waist or hem of a child's garment."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="A cord at a child's waist",
    problem="cord_at_waist",
    stage="open",
    why=(
        "A long end at waist or hem catches in doors and vehicles. In the USA no more than 3 in may hang out of its "
        "channel at its widest, without toggle or knot, and it is tacked at center back (sizes 2T to 16, ASTM F1816). "
        "A longer end cannot stay."
    ),
    source="CPSC-DRAW",
    when=(
        given("there is a cord at waist or hem", Trait(role="cloth", place=MATCH.place, slot="cords", word="waist")),
        given("a child wears it", Trait(role="wearer", slot="age", word="child")),
    ),
    says=(
        "There is a cord at waist or hem, and a child wears it: its ends may hang out 3 in at the most, and it must be "
        "tacked."
    ),
    fires=(
        fires(
            "a tunic with a drawstring",
            trait("cloth.cords", "cloth", "waist"),
            trait("wearer.age", "wearer", "child"),
        ),
    ),
    near=(near("the cord is at the neck", word="neck"), near("an adult wears it", at=1, word="adult")),
)
