"""Pin a band that does not fasten."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Pin a band that does not fasten",
    problem="band_unfastened",
    fix="band.fixes.pin_it",
    why="It gets her through the evening.",
    source="common-practice",
    when=(),
    fires=(fires("as found", problem("band_unfastened", "band", "waistband", "closure")),),
    near=(near("another problem", name="press_due"),),
)
