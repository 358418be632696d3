"""Turn worn cuffs."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Turn worn cuffs",
    problem="cuff_worn",
    fix="cuff.fixes.turn",
    why="Only the outside is worn, and a cuff has an inside.",
    source="CASTLE",
    when=(),
    fires=(fires("turn worn cuffs", problem("cuff_worn", "cuff", "cuff", "mend")),),
    near=(near("another problem", name="slit_short"),),
)
