"""A waistband is shorter than the edge it finishes."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return -over


rule = Find(
    title="Waistband shorter than its edge",
    problem="band_shorter",
    stage="join",
    why=(
        "A band of its own holds the waist: where it is shorter than the edge it is sewn to, it takes back what was "
        "let out. It cannot be sewn on as it is."
    ),
    source="common-practice",
    when=(
        given(
            "a band and the edge it finishes are measured",
            Joined(
                kind="band",
                role="waistband",
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
        "{place} is {over} shorter than the edge it is sewn to. Sewn to each other they must come out alike, so "
        "it cannot be left."
    ),
    fires=(
        fires(
            "1 in shorter",
            joined("band", ("band.edge", "waistband"), ("trousers.edge", "lower_part"), "1 in", under=True),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=-length("1/32 in")),
        near("longer, not shorter", over_mm=length("1 in")),
        near("two parts sewn to each other", kind="seam"),
        near("another part", role="lower_part"),
    ),
)
