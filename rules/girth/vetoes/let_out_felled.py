"""A felled center-back seam is let out by 1 in at the most."""

from advisor.knowledge import MATCH, Mm, Trait, Veto, fires, given, length, near, offered, problem, such_that, trait

MOST = length("1 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="A felled seam holds 1 in at the most",
    fix="girth.fixes.let_out",
    why="One allowance of a felled seam is trimmed away under the other. A denim page lets the waist of jeans out by "
    "1/2 to 1 in at the most.",
    source="NINEL",
    when=(
        given(
            "the seam is felled or topstitched",
            Trait(role="lower_part", slot="center_seam", word="felled", place=MATCH.place),
        ),
        such_that("more than 1 in is wanted", past),
    ),
    says="The center-back seam is felled; {amount} is wanted, and 1 in is the most a denim source lets out of jeans.",
    fires=(
        fires(
            "1 1/2 in wanted of jeans",
            offered("too_narrow", "trousers", "lower_part", "girth.fixes.let_out"),
            problem("too_narrow", "trousers", "lower_part", "girth", "1 1/2 in"),
            trait("trousers.center_seam", "lower_part", "felled"),
        ),
    ),
    near=(
        near("another fix", fix="girth.fixes.side_strips"),
        near("exactly 1 in", at=1, mm=length("1 in")),
        near("an ordinary seam", at=2, word="plain"),
    ),
)
