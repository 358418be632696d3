"""The edge above a waist seam is shorter than the edge it is sewn to."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Upper part narrower than the waist it joins",
    problem="narrower",
    stage="join",
    why=(
        "Two edges that are sewn to each other must come out equally long. A shorter upper edge draws the waist "
        "together, and what the lower part has to spare puckers under it: it cannot be sewn as it is."
    ),
    source="common-practice",
    when=(
        given(
            "an edge above a waist and the edge it is sewn to are measured",
            Joined(
                kind="seam",
                role="upper_part",
                place=MATCH.place,
                other=MATCH.other,
                over_mm=MATCH.over,
                slack_mm=MATCH.slack,
            ),
        ),
        such_that("it is shorter by more than a tape can miss", lambda over, slack: over < -slack),
    ),
    amount=amount,
    says=(
        "{place} is {over} narrower round than {other}, and the two are sewn to each other: it cannot be "
        "left, the edges must come out alike."
    ),
    fires=(
        fires(
            "1/2 in narrower",
            joined("seam", ("bodice.edge", "upper_part"), ("trousers.edge", "lower_part"), "1/2 in", under=True),
            amount=length("1/2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("wider, not narrower", over_mm=length("1/2 in")),
        near("a band that is sewn on", kind="band"),
        near("another part", role="lower_part"),
    ),
)
