"""Dry-clean what has not been washed."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Dry-clean what has not been washed",
    problem="unwashed",
    fix="cloth.fixes.dry_clean_first",
    why="What may not be washed in water is cleaned before steam and iron set its dirt.",
    source="MSIN",
    when=(),
    fires=(fires("dry-clean what has not been washed", problem("unwashed", "cloth", "cloth", "open")),),
    near=(near("another problem", name="thin"),),
)
