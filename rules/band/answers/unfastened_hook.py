"""Hook a band that does not fasten."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Hook a band that does not fasten",
    problem="band_unfastened",
    fix="band.fixes.hook_and_bar",
    why="What was hooked before is hooked again, and nothing shows outside.",
    source="HOOKBAR",
    when=(),
    fires=(fires("as found", problem("band_unfastened", "band", "waistband", "closure")),),
    near=(near("another problem", name="press_due"),),
)
