"""Leave a worn hole."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a worn hole",
    problem="buttonhole_worn",
    fix="general.fixes.leave",
    why="A frayed hole holds for a while; one that is torn lets its button go at every breath.",
    source="common-practice",
    when=(),
    fires=(fires("leave a worn hole", problem("buttonhole_worn", "stand", "button_stand", "mend")),),
    near=(near("another problem", name="front_gapes"),),
)
