"""A new slider for a worn zipper."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="A new slider for a worn zipper",
    problem="zipper_worn",
    fix="closure.fixes.new_slider",
    role="front_opening",
    why="Mostly the slider has widened and the teeth are good; then the slider alone is changed.",
    source="ENGFIX",
    when=(),
    fires=(
        fires(
            "a zipper that splits",
            problem("zipper_worn", "front", "front_opening", "closure"),
        ),
    ),
    near=(near("it runs well and is too long", name="closure_long"),),
)
