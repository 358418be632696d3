"""A new zipper for a worn one."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="A new zipper for a worn one",
    problem="zipper_worn",
    fix="closure.fixes.new_zipper",
    role="front_opening",
    why="A new zipper settles it whatever is worn, slider, teeth or tape.",
    source="common-practice",
    when=(given("the zipper is set in plainly", Trait(place=MATCH.place, slot="setting", word="plain")),),
    fires=(
        fires(
            "a zipper that splits",
            problem("zipper_worn", "front", "front_opening", "closure"),
            trait("front.setting", "front_opening", "plain"),
        ),
    ),
    near=(
        near("it runs well and is too long", name="closure_long"),
        near("it lies behind a fly or a lining", at=1, word="covered"),
    ),
)
