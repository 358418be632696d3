"""Lengthen a short sleeve with deeper cuffs."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Lengthen a short sleeve with deeper cuffs",
    problem="too_short",
    fix="cuff.fixes.deeper_cuffs",
    why="What is short goes into the cuff, where a seam is anyway.",
    source="common-practice",
    when=(given("it ends in a cuff", Trait(place=MATCH.place, role="sleeve_end", slot="finish", word="cuff")),),
    fires=(
        fires(
            "lengthen a short sleeve with deeper cuffs",
            problem("too_short", "sleeve", "sleeve_end", "hem", "1 in"),
            trait("sleeve.finish", "sleeve_end", "cuff"),
        ),
    ),
    near=(
        near("another problem", name="too_long"),
        near("it ends in a hem", at=1, word="hem"),
    ),
)
