"""The seam was moved for the hip already, and took with it what the waist could give."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, near_without, offered, problem, such_that, trait

AT = {
    "girth.fixes.side_seams": "sides",
    "girth.fixes.side_strips": "sides",
    "girth.fixes.center_back": "center back",
    "girth.fixes.center_back_felled": "center back",
    "girth.fixes.let_out": "center back",
    "girth.fixes.let_out_part": "center back",
}
NAMED = {"sides": "side seams", "center back": "center-back seam"}

rule = Veto(
    title="The seam is in work for the hip",
    why="A seam moved for the hip took in or gave out at the waist what could run along one line. More there would "
    "dent above the hip; it is for darts or for another seam.",
    source="common-practice",
    when=(
        given("a seam was moved for the hip", Trait(role="hip", slot="worked", word=MATCH.worked, place=MATCH.other)),
        such_that("the fix works at that seam", lambda fix, worked: AT.get(fix) == worked),
    ),
    reckons={"seam": lambda worked: NAMED[worked]},
    says="The {seam} took what could run along one line when it was moved for the hip: {amount} more belongs "
    "elsewhere.",
    fires=(
        fires(
            "sides moved for the hip",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.side_seams"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("hip.worked", "hip", "sides"),
        ),
    ),
    near=(
        near("darts", fix="girth.fixes.back_darts"),
        near("it was the other seam", at=2, word="center back"),
        near_without("there is no hip to speak of", at=2),
    ),
)
