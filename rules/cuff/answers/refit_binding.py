"""Refit the band of a slit."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Refit the band of a slit",
    problem="binding_misfits",
    fix="cuff.fixes.refit_binding",
    why="A band is unpicked in minutes and lies flat when it fits.",
    source="common-practice",
    when=(),
    fires=(fires("refit the band of a slit", problem("binding_misfits", "cuff", "cuff", "finish", "1/4 in")),),
    near=(near("another problem", name="slit_short"),),
)
