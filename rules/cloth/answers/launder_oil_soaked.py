"""Launder what is soaked with oil."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Launder what is soaked with oil",
    problem="oil_soaked",
    fix="cloth.fixes.launder_oil",
    why="Oil is out before anything warm comes near it.",
    source="FD-CORV",
    when=(),
    fires=(fires("launder what is soaked with oil", problem("oil_soaked", "cloth", "cloth", "open")),),
    near=(near("another problem", name="moldy"),),
)
