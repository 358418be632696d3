"""A tapered end whose hem is too short round."""

from advisor.knowledge import MATCH, Measure, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem
from advisor.operations.hem_plans import EACH_EDGE_MOST, fold_up_longer

rule = Veto(
    title="Tapers too much for this hem",
    why=(
        "Turned up, the edge of a tapered end is shorter round than the place it meets. The seams in the allowance "
        "are sewn outward, a mirror of the leg above, but 1/2 in of allowance lets out no more than 3/8 in on each "
        "of the 4 edges."
    ),
    source="common-practice",
    when=(
        given("the old hem is measured", Measure(place=MATCH.place, role=MATCH.role, slot="turn_up", mm=MATCH.turn_up)),
        given("its round is measured", Measure(place=MATCH.place, role=MATCH.role, slot="round", mm=MATCH.at)),
        given("and its round above", Measure(place=MATCH.place, role=MATCH.role, slot="round_above", mm=MATCH.above)),
        such_that(
            "the edge is shorter than the seams let out",
            lambda name, fix, role, amount, turn_up, at, above: (
                -fold_up_longer(name, fix, role, amount, turn_up, at, above) > 4 * EACH_EDGE_MOST
            ),
        ),
    ),
    reckons={"shorter": fold_up_longer, "most": lambda: 4 * EACH_EDGE_MOST},
    says=(
        "{place} tapers: turned up, the edge would be {shorter} too short for where it lands, and its seams let "
        "out {most} at the most."
    ),
    fires=(
        fires(
            "a tapered sleeve",
            offered("too_long", "sleeve", "sleeve_end", "hems.fixes.single_turn"),
            problem("too_long", "sleeve", "sleeve_end", "hem", "2 in"),
            measure("sleeve.turn_up", "sleeve_end", "1 in"),
            measure("sleeve.round", "sleeve_end", "8 in"),
            measure("sleeve.round_above", "sleeve_end", "10 in"),
        ),
    ),
    near=(
        near("a narrow hem", at=0, fix="hems.fixes.double_fold"),
        near("wider at the end", at=3, mm=length("9 in")),
        near("narrower above", at=4, mm=length("9 1/2 in")),
        near_without("the old hem is not measured", at=2),
        near_without("its round is not measured", at=3),
        near_without("its round above is not measured", at=4),
    ),
)
