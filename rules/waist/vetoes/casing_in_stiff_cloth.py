"""Heavy cloth does not blouse."""

from advisor.knowledge import MATCH, Mm, Trait, Veto, fires, given, length, near, offered, problem, such_that, trait

MOST = length("1 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Heavy cloth does not blouse over a casing",
    fix="waist.fixes.casing",
    why="Stiff and heavy cloth stands out over the elastic in a roll instead of falling over it.",
    source="common-practice",
    when=(
        given("the cloth is heavy", Trait(role="cloth", slot="weight", word="heavy", place=MATCH.cloth)),
        such_that("more than 1 in would have to blouse", past),
    ),
    says="{amount} of heavy cloth would stand out in a roll over the elastic; 1 in is the most.",
    fires=(
        fires(
            "1 1/2 in of denim",
            offered("waist_low", "bodice", "upper_part", "waist.fixes.casing"),
            problem("waist_low", "bodice", "upper_part", "level", "1 1/2 in"),
            trait("cloth.weight", "cloth", "heavy"),
        ),
    ),
    near=(
        near("the seam is raised instead", fix="waist.fixes.raise_seam"),
        near("exactly 1 in", at=1, mm=length("1 in")),
        near("cloth of medium weight", at=2, word="medium"),
    ),
)
