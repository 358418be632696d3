"""Only the waist is loose, and the seam would take more than may run out above the hip."""

from advisor.knowledge import MATCH, Mm, Trait, Veto, fires, given, length, near, offered, problem, such_that, trait

MOST = length("1 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Only the waist is loose",
    fix=("girth.fixes.center_back", "girth.fixes.center_back_felled"),
    why="A seam at the waist runs out in 5 in for every 1/2 in each side, or it dents: by the high hip it has given 1 "
    "in. Men's trousers change by about 1 in at center back without touching the fit elsewhere. More has to go on to "
    "the hip, where nothing is to spare; darts give it back before.",
    source="HSW",
    when=(
        given(
            "it is loose at the waist only",
            Trait(role="lower_part", slot="loose_to", word="waist", place=MATCH.place),
        ),
        such_that("more than 1 in would have to go", past),
    ),
    says="Only the waist is loose. A seam that takes {amount} there takes from the hip too, which has nothing to "
    "spare; 1 in is the most here, and darts give it back below the waist.",
    fires=(
        fires(
            "2 in, at the waist only",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.center_back"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("trousers.loose_to", "lower_part", "waist"),
        ),
        fires(
            "2 in, at the waist only; the other way",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.center_back_felled"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("trousers.loose_to", "lower_part", "waist"),
        ),
    ),
    near=(
        near("another fix", fix="girth.fixes.back_darts"),
        near("exactly 1 in", at=1, mm=length("1 in")),
        near("loose to the high hip", at=2, word="high_hip"),
    ),
)
