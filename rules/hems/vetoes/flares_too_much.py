"""A flared end whose hem is too long round."""

from advisor.knowledge import MATCH, Measure, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait
from advisor.operations.hem_plans import fold_up_eases, fold_up_longer

rule = Veto(
    title="Flares too much for this hem",
    why=(
        "Turned up, the edge of a flared end is longer round than the place it meets. A little of that is drawn up "
        "and steamed away; past what the cloth takes up it lies in folds. A narrower hem or a shaped facing does "
        "not have it."
    ),
    source="OSU-L87",
    when=(
        given("the old hem is measured", Measure(place=MATCH.place, role=MATCH.role, slot="turn_up", mm=MATCH.turn_up)),
        given("its round is measured", Measure(place=MATCH.place, role=MATCH.role, slot="round", mm=MATCH.at)),
        given("and its round above", Measure(place=MATCH.place, role=MATCH.role, slot="round_above", mm=MATCH.above)),
        given("the kind of cloth is known", Trait(role="cloth", slot="kind", word=MATCH.kind)),
        such_that(
            "the edge is longer than the cloth takes up",
            lambda name, fix, role, amount, turn_up, at, above, kind: (
                fold_up_longer(name, fix, role, amount, turn_up, at, above)
                > fold_up_eases(name, fix, role, amount, turn_up, at, above, kind)
            ),
        ),
    ),
    reckons={"longer": fold_up_longer, "most": fold_up_eases},
    says=(
        "{place} flares: turned up, the edge would be {longer} longer round than where it lands, and this cloth "
        "takes up {most}."
    ),
    fires=(
        fires(
            "a flared sleeve",
            offered("too_long", "sleeve", "sleeve_end", "hems.fixes.single_turn"),
            problem("too_long", "sleeve", "sleeve_end", "hem", "2 in"),
            measure("sleeve.turn_up", "sleeve_end", "1 in"),
            measure("sleeve.round", "sleeve_end", "20 in"),
            measure("sleeve.round_above", "sleeve_end", "18 1/2 in"),
            trait("cloth.kind", "cloth", "cotton"),
        ),
    ),
    near=(
        near("a narrow hem", at=0, fix="hems.fixes.double_fold"),
        near("straight", at=3, mm=length("18 1/2 in")),
        near("nearly straight", at=4, mm=length("19 1/2 in")),
        near("soft wool", at=5, word="wool"),
        near_without("the old hem is not measured", at=2),
        near_without("its round is not measured", at=3),
        near_without("its round above is not measured", at=4),
        near_without("the cloth is not known", at=5),
    ),
)
