"""Sew a stay to thin cloth."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Sew a stay to thin cloth",
    problem="thin",
    fix="cloth.fixes.sew_stay",
    why="A stay sewn behind takes the pull off thin threads, without heat or glue.",
    source="MAKERP",
    when=(),
    fires=(fires("sew a stay to thin cloth", problem("thin", "cloth", "cloth", "open")),),
    near=(near("another problem", name="perished"),),
)
