"""A worn zipper is not worth shortening."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, near_without, offered, problem, such_that, trait

KEEPING = frozenset(
    f"closure.fixes.{name}"
    for name in (
        "shorten_zipper_bottom",
        "shorten_zipper_bottom_covered",
        "shorten_zipper_top",
        "shorten_zipper_top_covered",
        "sew_end_shut",
    )
)
IS = {"worn": "sticks or opens again behind the slider", "broken": "has lost teeth or has a torn coil"}

rule = Veto(
    title="Worn zipper not kept",
    why="Taking a zipper out and setting it in again is the whole work of a new one; a worn one is not worth it.",
    source="common-practice",
    when=(
        such_that("the fix takes the old zipper out and keeps it", lambda fix: fix in KEEPING),
        given("how the zipper runs", Trait(place=MATCH.place, slot="worn", word=MATCH.runs)),
        such_that("it does not run well", lambda runs: runs in IS),
    ),
    says="The zipper {fault}: out of the garment once, it is changed and not set in again.",
    reckons={"fault": lambda runs: IS[runs]},
    fires=(
        fires(
            "one that splits, to be shortened",
            offered("closure_long", "front", "front_opening", "closure.fixes.shorten_zipper_bottom"),
            problem("closure_long", "front", "front_opening", "closure", "1 1/2 in"),
            trait("front.worn", "front_opening", "worn"),
        ),
    ),
    near=(
        near("a new one is put in", fix="closure.fixes.new_zipper"),
        near("it runs well", at=2, word="sound"),
        near_without("nobody tried it", at=2),
    ),
)
