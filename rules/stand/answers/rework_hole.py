"""Work a frayed hole over."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Work a frayed hole over",
    problem="buttonhole_worn",
    fix="stand.fixes.rework_hole",
    why="Only the stitching is worn, and stitching is made again.",
    source="COLO8528",
    when=(),
    fires=(fires("work a frayed hole over", problem("buttonhole_worn", "stand", "button_stand", "mend")),),
    near=(near("another problem", name="front_gapes"),),
)
