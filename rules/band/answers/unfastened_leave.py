"""Leave the band unfastened."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave the band unfastened",
    problem="band_unfastened",
    fix="general.fixes.leave",
    why="Under a belt or with suspenders the zipper may hold for a while; it is the next thing to go.",
    source="common-practice",
    when=(),
    fires=(fires("as found", problem("band_unfastened", "band", "waistband", "closure")),),
    near=(near("another problem", name="press_due"),),
)
