"""The center-back seam no longer lies midway between the back pockets."""

from advisor.knowledge import MATCH, Find, Measure, Mm, fires, given, length, measure, near, near_without, such_that


def differ(gap: Mm, both: Mm) -> bool:
    return gap != both


def amount(gap: Mm, both: Mm) -> Mm:
    return abs(gap - both)


rule = Find(
    title="Seam off center between the pockets",
    problem="seam_off_center",
    stage="finish",
    why="A seam at center back gives half to each side. If the two distances from the pockets to the seam do not add "
    "up to the gap between them, one side got more than the other.",
    source="THEISM",
    when=(
        given("the gap is known", Measure(role="back_pockets", slot="gap", place=MATCH.place, mm=MATCH.gap)),
        given(
            "and the way from each pocket to the seam",
            Measure(role="back_pockets", slot="to_seam", place=MATCH.place, mm=MATCH.both),
        ),
        such_that("they do not add up", differ),
    ),
    amount=amount,
    reckons={"apart": amount},
    says="Between {place} the center-back seam lies {apart} out of the middle.",
    fires=(
        fires(
            "1/8 in out",
            measure("back_pocket.gap", "back_pockets", "6 in"),
            measure("back_pocket.to_seam", "back_pockets", "6 1/8 in"),
            amount=length("1/8 in"),
        ),
    ),
    near=(
        near("midway", mm=length("6 1/8 in")),
        near_without("the gap was not measured", at=0),
        near_without("nobody measured to the seam", at=1),
    ),
)
