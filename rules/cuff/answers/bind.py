"""Bind worn cuffs."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Bind worn cuffs",
    problem="cuff_worn",
    fix="cuff.fixes.bind",
    why="The frayed edge is shut in, whichever side is worn.",
    source="common-practice",
    when=(),
    fires=(fires("bind worn cuffs", problem("cuff_worn", "cuff", "cuff", "mend")),),
    near=(near("another problem", name="slit_short"),),
)
