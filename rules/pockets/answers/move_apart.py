"""Moving them answers back pockets that stand too near each other."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Move near pockets apart",
    problem="pockets_near",
    fix="pockets.fixes.move_apart",
    why="The seam may be where it should, and the pockets are put back where they looked right.",
    source="common-practice",
    when=(),
    fires=(fires("1/2 in too near", problem("pockets_near", "back_pocket", "back_pockets", "join", "1/2 in")),),
    near=(near("another problem", name="too_wide"),),
)
