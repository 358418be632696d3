"""A waistband is longer than the edge it finishes."""

from advisor.knowledge import MATCH, Find, Joined, Mm, fires, given, joined, length, near, such_that


def amount(over: Mm) -> Mm:
    return over


rule = Find(
    title="Waistband longer than its edge",
    problem="band_longer",
    stage="join",
    why=(
        "A band of its own is sewn to the edge all along. It must lose exactly what the garment lost, or its ends "
        "stand past the closing and its seams no longer meet those of the garment: it "
        "cannot be sewn on as it is."
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
        such_that("it is longer by more than a tape can miss", lambda over, slack: over > slack),
    ),
    amount=amount,
    says=(
        "{place} is {over} longer than the edge it is sewn to. Sewn to each other they must come out alike, so "
        "it cannot be left."
    ),
    fires=(
        fires(
            "2 in longer",
            joined("band", ("band.edge", "waistband"), ("trousers.edge", "lower_part"), "2 in"),
            amount=length("2 in"),
        ),
    ),
    near=(
        near("less than a mark of the tape", over_mm=length("1/32 in")),
        near("shorter, not longer", over_mm=-length("2 in")),
        near("two parts sewn to each other", kind="seam"),
        near("another part", role="lower_part"),
    ),
)
