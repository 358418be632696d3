"""Hold a long sleeve at the wrist."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, near_without, problem, trait

rule = Answer(
    title="Hold a long sleeve at the wrist",
    problem="too_long",
    fix="cuff.fixes.tighten_cuffs",
    why="It is the cuff that should stop a shirt sleeve, and a loose one lets it down over the hand.",
    source="common-practice",
    when=(
        given("it ends in a cuff", Trait(place=MATCH.place, role="sleeve_end", slot="finish", word="cuff")),
        given("it is known how the cuffs sit", Trait(place=MATCH.cuff, role="cuff", slot="grip", word=MATCH.grip)),
    ),
    fires=(
        fires(
            "a sleeve that hangs over a loose cuff",
            problem("too_long", "sleeve", "sleeve_end", "hem", "1 in"),
            trait("sleeve.finish", "sleeve_end", "cuff"),
            trait("cuff.grip", "cuff", "slips"),
        ),
    ),
    near=(
        near("another problem", name="too_short"),
        near("it ends in a hem", at=1, word="hem"),
        near_without("nothing is known of a cuff", at=2),
    ),
)
