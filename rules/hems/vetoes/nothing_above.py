"""There is nothing to set a band in above."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="A plain hem needs no band set in",
    fix="hems.fixes.insert_band",
    why=(
        "Below the band there would be nothing but a plain hem: a band sewn on at the end does the same with one "
        "seam less."
    ),
    source="common-practice",
    when=(given("it ends in a plain hem", Trait(place=MATCH.place, role=MATCH.role, slot="finish", word="hem")),),
    says="{place} ends in a plain hem: a band sewn on at its end does the same with one seam less.",
    fires=(
        fires(
            "a plain leg",
            offered("too_short", "leg", "leg_end", "hems.fixes.insert_band"),
            problem("too_short", "leg", "leg_end", "hem", "1 in"),
            trait("leg.finish", "leg_end", "hem"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="hems.fixes.add_band"),
        near("a cuff", at=2, word="cuff"),
        near("it is the sleeve that ends so", at=2, place="sleeve", role="sleeve_end"),
    ),
)
