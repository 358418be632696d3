"""What was pinned at the waist and what was measured there do not agree."""

from advisor.figures.ease import READING_ERROR
from advisor.knowledge import MATCH, Find, Measure, Mm, Trait, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, trait

WITH = {"yes": "helped", "no": "alone"}


def past(over: Mm, help: str) -> bool:
    return help in WITH and over > READING_ERROR[WITH[help]]


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Pins and tape disagree",
    problem="evidence_disagrees",
    stage="open",
    why="Two ways to the same number came out further apart than a tape errs: one of them is wrong. The middle of a "
    "right number and a wrong one is wrong too, so they are never averaged.",
    source="from-memory",
    when=(
        given(
            "a place was both pinned and measured",
            Measure(role=MATCH.role, slot="disagree", place=MATCH.place, mm=MATCH.over),
        ),
        given("it is known who read the tape", Trait(role="bench", slot="help", word=MATCH.help)),
        such_that("the two lie further apart than a tape errs", past),
    ),
    amount=amount,
    reckons={"errs": lambda help: READING_ERROR[WITH[help]]},
    says="At {place} the pins and the tape differ by {over}; a girth read this way errs by {errs} at most. The work "
    "is reckoned from the pins until you measure again.",
    fires=(
        fires(
            "1/2 in apart, with help",
            measure("waist.disagree", "waist_seam", "1/2 in"),
            trait("bench.help", "bench", "yes"),
            amount=length("1/2 in"),
        ),
        fires(
            "5/8 in apart, alone",
            measure("waist.disagree", "waist_seam", "5/8 in"),
            trait("bench.help", "bench", "no"),
            amount=length("5/8 in"),
        ),
    ),
    near=(
        near("exactly 1/4 in, with help", mm=length("1/4 in")),
        near("1/2 in is no more than one errs alone", at=1, word="no"),
        near("another measure of the seam", slot="low_by"),
        near_without("nobody said who read the tape", at=1),
    ),
)
