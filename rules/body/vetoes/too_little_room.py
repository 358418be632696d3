"""Taken in as wanted, too little room would be left over the chest."""

from advisor.knowledge import MATCH, Measure, Mm, Trait, Veto, fires, given, near, such_that
from advisor.knowledge.examples import length, measure, offered, problem, trait

LEAST = length("1 1/2 in")
OF_THE_WHOLE = ("body.fixes.take_in_sides", "body.fixes.take_in_sides_felled", "body.fixes.back_pleat")


def room(wanted: Mm, chest: Mm) -> Mm:
    return wanted - chest


rule = Veto(
    title="Too little room over the chest",
    why=(
        "Woven cloth does not stretch: a university text on costume gives a bodice 1 1/2 to 2 in over the bust and a "
        "fitted shirt 1 1/2 to 2 1/2 in. Under 1 1/2 in it opens between the buttons and tears behind the arms."
    ),
    source="CWU16",
    when=(
        such_that("the fix takes in chest and back", lambda fix: fix in OF_THE_WHOLE),
        given(
            "it is known how wide it is to be",
            Measure(role="body_width", slot="wanted", place=MATCH.place, mm=MATCH.wanted),
        ),
        given("and the chest of the body", Measure(role="wearer", slot="chest", place=MATCH.wearer, mm=MATCH.chest)),
        given(
            "it is loose all round, chest and all",
            Trait(role="body_width", slot="loose_at", place=MATCH.place, word="round"),
        ),
        such_that("less than 1 1/2 in would be left", lambda wanted, chest: room(wanted, chest) < LEAST),
    ),
    reckons={"left": room},
    says=(
        "Taken in by {amount} it would have {left} over the chest of {chest}; woven cloth wants 1 1/2 in at the least."
    ),
    fires=(
        fires(
            "1 in of room",
            offered("body_wide", "body", "body_width", "body.fixes.take_in_sides"),
            problem("body_wide", "body", "body_width", "girth", "2 in"),
            measure("body.wanted", "body_width", "39 in"),
            measure("wearer.chest", "wearer", "38 in"),
            trait("body.loose_at", "body_width", "round"),
        ),
    ),
    near=(
        near("a fix at the waist", fix="body.fixes.back_darts"),
        near("exactly 1 1/2 in", at=2, mm=length("39 1/2 in")),
        near("another measure of it", at=2, slot="round"),
        near("a slimmer chest", at=3, mm=length("37 in")),
        near("another measure of the body", at=3, slot="neck"),
        near("only the back was pinned", at=4, word="back"),
    ),
)
