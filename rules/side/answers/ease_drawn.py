"""Set a tight closing again."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Set a tight closing again",
    problem="drawn_too_far",
    fix="side.fixes.ease_closing",
    why="The closing comes back to where the edges meet.",
    source="common-practice",
    when=(),
    fires=(fires("1/4 in too far", problem("drawn_too_far", "side_opening", "side_opening", "finish", "1/4 in")),),
    near=(near("it stands open", name="gapes"),),
)
