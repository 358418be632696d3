"""Leave a worn zipper."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a worn zipper",
    problem="zipper_worn",
    fix="general.fixes.leave",
    role="front_opening",
    why="A zipper that sticks can be rubbed with soap and worn on; it will fail one day, and not at a good moment.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "a zipper that splits",
            problem("zipper_worn", "front", "front_opening", "closure"),
        ),
    ),
    near=(near("it runs well and is too long", name="closure_long"),),
)
