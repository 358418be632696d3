"""What was pinned round the chest and what was measured there do not agree."""

from advisor.figures.ease import READING_ERROR
from advisor.knowledge import MATCH, Find, Measure, Mm, Trait, fires, given, near, near_without, such_that
from advisor.knowledge.examples import length, measure, trait

WITH = {"yes": "helped", "no": "alone"}


def past(over: Mm, help: str) -> bool:
    return help in WITH and over > READING_ERROR[WITH[help]]


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Body tried on and body measured disagree",
    problem="body_evidence_disagrees",
    stage="open",
    why=(
        "Two ways to the same number came out further apart than a tape errs. One of them is wrong, or the room wanted "
        "is not the room this person likes; the middle of the two would be neither. Pins at back or waist alone say "
        "nothing of the chest and are not compared."
    ),
    source="from-memory",
    when=(
        given(
            "it was both tried on and measured",
            Measure(role="body_width", slot="apart", place=MATCH.place, mm=MATCH.over),
        ),
        given(
            "what was pinned was loose all round",
            Trait(role="body_width", slot="loose_at", place=MATCH.place, word="round"),
        ),
        given("it is known who read the tape", Trait(role="bench", slot="help", word=MATCH.help)),
        such_that("the two lie further apart than a tape errs", past),
    ),
    amount=amount,
    reckons={"errs": lambda help: READING_ERROR[WITH[help]]},
    says=(
        "What was found on the body and what chest and room come to differ by {over} at {place}; a girth read this way "
        "errs by {errs} at most. The work is reckoned from what was found on the body."
    ),
    fires=(
        fires(
            "1/2 in apart, with help",
            measure("body.apart", "body_width", "1/2 in"),
            trait("body.loose_at", "body_width", "round"),
            trait("bench.help", "bench", "yes"),
            amount=length("1/2 in"),
        ),
        fires(
            "5/8 in apart, alone",
            measure("body.apart", "body_width", "5/8 in"),
            trait("body.loose_at", "body_width", "round"),
            trait("bench.help", "bench", "no"),
            amount=length("5/8 in"),
        ),
    ),
    near=(
        near("exactly 1/4 in, with help", mm=length("1/4 in")),
        near("another measure of it", slot="ease"),
        near("only the waist was pinned", at=1, word="waist"),
        near("1/2 in is no more than one errs alone", at=2, word="no"),
        near_without("nobody said who read the tape", at=2),
    ),
)
