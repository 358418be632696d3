"""So little is ease, not gathers."""

from advisor.figures.edges import drawn_fullness
from advisor.figures.gathers import EASE_UP_TO
from advisor.knowledge import MATCH, Measure, Trait, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait

rule = Veto(
    title="So little is ease, not gathers",
    fix="edges.fixes.gather",
    why=(
        "Up to about 1.1 times as full, even over the shortest stretch that can be gathered, the cloth shows no "
        "folds: that is ease, and easing it in looks better."
    ),
    source="common-practice",
    when=(
        given(
            "it is known where the spare width lies",
            Trait(place=MATCH.place, role="upper_part", slot="spare_at", word=MATCH.spare_at),
        ),
        given(
            "the room for gathers is known", Measure(place=MATCH.place, role="upper_part", slot="zone", mm=MATCH.room)
        ),
        such_that(
            "even over 2 in it is no more than 1.1 times as full",
            lambda amount, spare_at, room: drawn_fullness(amount, spare_at, room) <= EASE_UP_TO,
        ),
    ),
    reckons={"ratio": lambda amount, spare_at, room: drawn_fullness(amount, spare_at, room)},
    says=(
        "Over 2 in of each quarter the edge would be only {ratio} times as full: up to 1.1 that is ease, not "
        "gathers. Ease it in."
    ),
    fires=(
        fires(
            "1/2 in in all",
            offered("wider", "bodice", "upper_part", "edges.fixes.gather"),
            problem("wider", "bodice", "upper_part", "join", "1/2 in"),
            trait("bodice.spare_at", "upper_part", "round"),
            measure("bodice.zone", "upper_part", "4 in"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.ease_in"),
        near("more of it", at=1, mm=length("1 in")),
        near("all of it at the back", at=2, word="back"),
        near("hardly any room", at=3, mm=length("1/2 in")),
        near_without("it is not known where", at=2),
        near_without("the room is not known", at=3),
    ),
)
