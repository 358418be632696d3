"""Sew a button on a band that does not fasten."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Sew a button on a band that does not fasten",
    problem="band_unfastened",
    fix="band.fixes.sew_button",
    why="A button takes the pull of a waist better than anything that only hooks, and she has one in the box.",
    source="common-practice",
    when=(),
    fires=(fires("as found", problem("band_unfastened", "band", "waistband", "closure")),),
    near=(near("another problem", name="press_due"),),
)
