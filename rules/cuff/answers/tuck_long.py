"""Take up a long sleeve above its cuff."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Take up a long sleeve above its cuff",
    problem="too_long",
    fix="cuff.fixes.tuck_sleeves",
    why="With a cuff there is no hem to turn; a tuck higher up leaves cuff and slit whole.",
    source="common-practice",
    when=(given("it ends in a cuff", Trait(place=MATCH.place, role="sleeve_end", slot="finish", word="cuff")),),
    fires=(
        fires(
            "take up a long sleeve above its cuff",
            problem("too_long", "sleeve", "sleeve_end", "hem", "1 in"),
            trait("sleeve.finish", "sleeve_end", "cuff"),
        ),
    ),
    near=(
        near("another problem", name="too_short"),
        near("it ends in a hem", at=1, word="hem"),
    ),
)
