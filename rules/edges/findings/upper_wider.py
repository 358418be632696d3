"""The edge above a waist seam is longer than the edge it is sewn to."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Upper part wider than the waist it joins",
    problem="wider",
    stage="join",
    why=(
        "Two edges that are sewn to each other must come out equally long. Where the lower one was taken in, or the "
        "upper one cut higher where it is wider, the rest of it has to go somewhere: into gathers, pleats, darts or "
        "side seams. It cannot be sewn as it is."
    ),
    source="USDA-FIT13",
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
        such_that("it is longer by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says=(
        "{place} is {over} wider round than {other}, and the two are sewn to each other: it cannot be left, "
        "the edges must come out alike."
    ),
    fires=(
        fires(
            "2 in wider",
            joined("seam", ("bodice.edge", "upper_part"), ("trousers.edge", "lower_part"), "2 in"),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("narrower, not wider", over_mm=-length("2 in")),
        near("a band that is sewn on", kind="band"),
        near("another part", role="lower_part"),
    ),
)
