"""The cuffs sit at the wrist already."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="The cuffs sit at the wrist already",
    fix="cuff.fixes.tighten_cuffs",
    why="A cuff that sits at the wrist holds the sleeve already; closer, it only cuts in.",
    source="common-practice",
    when=(given("the cuffs sit at the wrist", Trait(place=MATCH.cuff, role="cuff", slot="grip", word="sits")),),
    says=("The cuffs sit at the wrist already: closer they would cut in, and the sleeve would be as long as it is."),
    fires=(
        fires(
            "the cuffs sit at the wrist already",
            offered("too_long", "sleeve", "sleeve_end", "cuff.fixes.tighten_cuffs"),
            problem("too_long", "sleeve", "sleeve_end", "hem", "1 in"),
            trait("cuff.grip", "cuff", "sits"),
        ),
    ),
    near=(
        near("another fix", fix="cuff.fixes.tuck_sleeves"),
        near("they slip over the hand", at=2, word="slips"),
    ),
)
