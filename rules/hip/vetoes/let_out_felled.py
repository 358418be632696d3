"""A felled seat seam is let out by 1 in at the most."""

from advisor.knowledge import MATCH, Mm, Trait, Veto, fires, given, length, near, offered, problem, such_that, trait

MOST = length("1 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="More than a felled seat seam gives",
    fix="hip.fixes.let_out_center_back",
    why="One allowance of a felled seam is trimmed away under the other; a denim page lets jeans out by 1/2 to 1 in "
    "at the most.",
    source="NINEL",
    when=(
        given(
            "the seam is felled or topstitched",
            Trait(role="lower_part", slot="center_seam", word="felled", place=MATCH.other),
        ),
        such_that("more than 1 in is wanted", past),
    ),
    says="The center-back seam is felled; {amount} is wanted, and 1 in is the most a denim source lets out of jeans.",
    fires=(
        fires(
            "1 1/2 in wanted of jeans",
            offered("hip_narrow", "hip", "hip", "hip.fixes.let_out_center_back"),
            problem("hip_narrow", "hip", "hip", "level", "1 1/2 in"),
            trait("trousers.center_seam", "lower_part", "felled"),
        ),
    ),
    near=(
        near("another fix", fix="hip.fixes.let_out_sides"),
        near("exactly 1 in", at=1, mm=length("1 in")),
        near("an ordinary seam", at=2, word="plain"),
    ),
)
