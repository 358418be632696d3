"""A new zipper for a worn covered one."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="A new zipper for a worn covered one",
    problem="zipper_worn",
    fix="closure.fixes.new_zipper_covered",
    role="front_opening",
    why="A new zipper settles it whatever is worn; the cover has to be opened for it and closed again.",
    source="common-practice",
    when=(given("the zipper lies behind a fly or a lining", Trait(place=MATCH.place, slot="setting", word="covered")),),
    fires=(
        fires(
            "a zipper that splits",
            problem("zipper_worn", "front", "front_opening", "closure"),
            trait("front.setting", "front_opening", "covered"),
        ),
    ),
    near=(
        near("it runs well and is too long", name="closure_long"),
        near("it is set in plainly", at=1, word="plain"),
    ),
)
