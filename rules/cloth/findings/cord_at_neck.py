"""A cord at the hood or neck of a child's garment."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="A cord at a child's neck",
    problem="cord_at_neck",
    stage="open",
    why=(
        "A cord at hood or neck can catch and strangle. In the USA none is allowed on outerwear of sizes 2T to 12 (16 "
        "CFR 1120, ASTM F1816); in Europe none up to 7 years or 134 cm, and none with free ends up to 14 years (EN "
        "14682). Whoever alters a child's garment is told the same; past those sizes it is still better out. "
        "On a child it cannot stay."
    ),
    source="TUKES",
    when=(
        given("there is a cord at hood or neck", Trait(role="cloth", place=MATCH.place, slot="cords", word="neck")),
        given("a child wears it", Trait(role="wearer", slot="age", word="child")),
    ),
    says="There is a cord at hood or neck, and a child wears it: no cord may stay there (EN 14682, 16 CFR 1120).",
    fires=(
        fires(
            "a hooded cape for a child",
            trait("cloth.cords", "cloth", "neck"),
            trait("wearer.age", "wearer", "child"),
        ),
    ),
    near=(near("the cord is at the waist", word="waist"), near("an adult wears it", at=1, word="adult")),
)
