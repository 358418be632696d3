"""A closing that shows, where it must be hidden."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

SHOWING = frozenset(
    f"closure.fixes.{name}"
    for name in ("buttons", "buttons_by_hand", "buttons_over_fly", "buttons_over_fly_by_hand", "new_snaps")
)

rule = Veto(
    title="Closing must be hidden",
    why="Buttons and snaps set through the front are seen across a table.",
    source="common-practice",
    when=(
        such_that("the fix sets fastenings that show", lambda fix: fix in SHOWING),
        given("the closing must be hidden", Trait(place=MATCH.place, slot="show", word="hidden")),
    ),
    says="The closing of {place} must be hidden, and these fastenings show.",
    fires=(
        fires(
            "buttons on a front that must look whole",
            offered("closure_long", "front", "front_opening", "closure.fixes.buttons"),
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.show", "front_opening", "hidden"),
        ),
    ),
    near=(
        near("a hidden placket", fix="closure.fixes.hidden_placket"),
        near("it may show", at=2, word="may"),
    ),
)
