"""Stitch over a worn fold."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Stitch over a worn fold",
    problem="collar_worn",
    fix="collar.fixes.quilt_fold",
    why="The quick way: it lasts a season and costs half an hour.",
    source="common-practice",
    when=(),
    fires=(fires("stitch over a worn fold", problem("collar_worn", "collar", "collar", "mend")),),
    near=(near("another problem", name="collar_tight"),),
)
