"""A foot would no longer pass the leg."""

from advisor.knowledge import MATCH, Measure, Mm, Veto, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, offered, problem

FIXES = (
    "leg.fixes.inseams",
    "leg.fixes.inseams_felled",
    "leg.fixes.outseams",
    "leg.fixes.both_seams",
)


def left(round: Mm, amount: Mm) -> Mm:
    return max(round - amount, Mm(0))


rule = Veto(
    title="A foot must pass",
    why="A leg without an opening must let heel and instep through, and at thigh and knee what is there must have "
    "room.",
    source="EHOWTAPER",
    when=(
        given(
            "the round of the leg is known", Measure(role="leg_girth", slot="round", place=MATCH.place, mm=MATCH.round)
        ),
        given("and what must pass there", Measure(role="leg_girth", slot="body", place=MATCH.place, mm=MATCH.body)),
        such_that("the fix makes it narrower", lambda fix: fix in FIXES),
        such_that("less would be left than must pass", lambda round, amount, body: left(round, amount) < body),
    ),
    reckons={"left": left},
    says="At {place} {left} would be left of {round}, and {body} must pass there.",
    fires=(
        fires(
            "4 in off a 16 in opening, for a foot of 13 in",
            offered("leg_wide", "opening", "leg_girth", "leg.fixes.both_seams"),
            problem("leg_wide", "opening", "leg_girth", "girth", "4 in"),
            measure("opening.round", "leg_girth", "16 in"),
            measure("opening.body", "leg_girth", "13 in"),
        ),
    ),
    near=(
        near("a fix that widens", fix="leg.fixes.let_out_both"),
        near("a foot that just passes", at=3, mm=length("12 in")),
        near("less comes off", at=1, mm=length("3 in")),
        near("a wider leg", at=2, mm=length("17 in")),
        near_without("the round is not known", at=2),
        near_without("nobody measured the foot", at=3),
    ),
)
