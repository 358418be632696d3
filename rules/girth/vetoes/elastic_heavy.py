"""Heavy cloth does not gather on elastic."""

from advisor.knowledge import MATCH, Mm, Trait, Veto, fires, given, length, near, offered, problem, such_that, trait

MOST = length("1 in")


def past(amount: Mm) -> bool:
    return amount > MOST


rule = Veto(
    title="Heavy cloth bunches on elastic",
    fix="girth.fixes.elastic_back",
    why="Fullness falls as cloth gets heavier: heavy cloth pushed together over elastic stands off the back in "
    "bunches, and the elastic loses.",
    source="DOOZIE",
    when=(
        given("the cloth is heavy", Trait(role="cloth", slot="weight", word="heavy", place=MATCH.cloth)),
        such_that("more than 1 in would have to be drawn in", past),
    ),
    says="{amount} of heavy cloth drawn in across the back stands off in bunches; 1 in is the most.",
    fires=(
        fires(
            "2 in of denim",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.elastic_back"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("cloth.weight", "cloth", "heavy"),
        ),
    ),
    near=(
        near("another fix", fix="girth.fixes.side_tabs"),
        near("exactly 1 in", at=1, mm=length("1 in")),
        near("cloth of medium weight", at=2, word="medium"),
    ),
)
