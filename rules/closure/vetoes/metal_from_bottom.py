"""Metal teeth are not shortened from the bottom."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

FROM_BOTTOM = frozenset(("closure.fixes.shorten_zipper_bottom", "closure.fixes.shorten_zipper_bottom_covered"))

rule = Veto(
    title="Metal teeth at the lower end",
    why="A stop of whip stitches is worn through by metal, and a needle or blade that meets a tooth breaks. By "
    "custom metal is "
    "shortened from the top, where the teeth are drawn.",
    source="IRONF",
    when=(
        such_that("the fix shortens from the bottom", lambda fix: fix in FROM_BOTTOM),
        given("the teeth are metal", Trait(place=MATCH.place, slot="teeth", word="metal")),
    ),
    says="The teeth are metal: they are neither stitched nor cut over, so it is shortened from the top.",
    fires=(
        fires(
            "metal teeth",
            offered("closure_long", "front", "front_opening", "closure.fixes.shorten_zipper_bottom"),
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.teeth", "front_opening", "metal"),
        ),
    ),
    near=(
        near("it is shortened from the top", fix="closure.fixes.shorten_zipper_top"),
        near("it is a coil", at=2, word="coil"),
    ),
)
