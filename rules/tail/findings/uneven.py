"""A lower edge that does not hang level."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return abs(over)


rule = Find(
    title="Tail or hem not level",
    problem="tail_uneven",
    stage="hem",
    why=(
        "Old hems are seldom level, and a high shoulder or a worn side takes one side up: worn outside the "
        "belt it shows."
    ),
    source="common-practice",
    when=(
        given(
            "it is known how far it is out of level",
            Joined(
                kind="fit",
                role="body_hem",
                slot="uneven_by",
                place=MATCH.place,
                over_mm=MATCH.over,
                slack_mm=MATCH.slack,
            ),
        ),
        such_that("it is more than a tape can miss", lambda over, slack: abs(over) > slack),
    ),
    amount=amount,
    says="{place} is {over} out of level.",
    fires=(
        fires(
            "3/4 in lower on the left",
            joined("fit", ("tail.uneven_by", "body_hem"), ("tail.level", "body_hem"), "3/4 in"),
            amount=length("3/4 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("its length is measured", slot="length"),
        near("it is the end of a sleeve", role="sleeve_end"),
        near("it is an edge sewn on, not a fit", kind="seam"),
    ),
)
