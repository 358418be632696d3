"""A new slider does not bring teeth back."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, such_that, trait

rule = Veto(
    title="Slider on lost teeth",
    why="A slider presses teeth together; where there are none it runs off, and behind a torn coil it opens again.",
    source="common-practice",
    when=(
        such_that("the fix changes the slider", lambda fix: fix == "closure.fixes.new_slider"),
        given("teeth are missing", Trait(place=MATCH.place, slot="worn", word="broken")),
    ),
    says="The zipper has lost teeth or its coil is torn, and a slider mends neither.",
    fires=(
        fires(
            "teeth missing",
            offered("zipper_worn", "front", "front_opening", "closure.fixes.new_slider"),
            problem("zipper_worn", "front", "front_opening", "closure"),
            trait("front.worn", "front_opening", "broken"),
        ),
    ),
    near=(
        near("the whole zipper is changed", fix="closure.fixes.new_zipper"),
        near("every tooth is there", at=2, word="worn"),
    ),
)
