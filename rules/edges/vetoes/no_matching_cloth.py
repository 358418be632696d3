"""There is no cloth to cut from."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, such_that, trait

NEEDS = ("edges.fixes.wedges", "edges.fixes.piece_band", "edges.fixes.new_band")


rule = Veto(
    title="No matching cloth",
    why="A wedge, a piece or a new band shows, and cloth of another make shrinks and fades in its own way.",
    source="common-practice",
    when=(
        given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no")),
        such_that("the fix is cut from matching cloth", lambda fix: fix in NEEDS),
    ),
    says="There is no matching cloth to hand to cut it from.",
    fires=(
        fires(
            "wedges without cloth",
            offered("narrower", "bodice", "upper_part", "edges.fixes.wedges"),
            problem("narrower", "bodice", "upper_part", "join", "1 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("a fix that needs none", at=0, fix="edges.fixes.let_out_upper_sides"),
        near("cloth to hand", at=2, word="yes"),
        near("something else is wanting", at=2, slot="washed"),
    ),
)
