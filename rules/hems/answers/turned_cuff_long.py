"""Turn the cuffs of a long leg up again."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Turn the cuffs of a long leg up again",
    problem="too_long",
    fix="hems.fixes.turned_cuff",
    role="leg_end",
    why="The cuffs are what makes these trousers: they come down, the leg is cut, and they go up again as deep as "
    "they were.",
    source="common-practice",
    when=(given("it has cuffs turned up", Trait(place=MATCH.place, role="leg_end", slot="finish", word="turned")),),
    fires=(
        fires(
            "2 in too long",
            problem("too_long", "leg", "leg_end", "hem", "2 in"),
            trait("leg.finish", "leg_end", "turned"),
        ),
    ),
    near=(near("too short", name="too_short"), near("a plain hem", at=1, word="hem")),
)
