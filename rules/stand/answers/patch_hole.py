"""Patch a torn hole."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Patch a torn hole",
    problem="buttonhole_worn",
    fix="stand.fixes.patch_hole",
    why="Torn or frayed, the cloth at its end gets new cloth behind it.",
    source="COLO8528",
    when=(),
    fires=(fires("patch a torn hole", problem("buttonhole_worn", "stand", "button_stand", "mend")),),
    near=(near("another problem", name="front_gapes"),),
)
