"""Leave thin cloth."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave thin cloth",
    problem="thin",
    fix="general.fixes.leave",
    why="Where no seam near it is opened, thin cloth may go on as it is.",
    source="common-practice",
    when=(),
    fires=(fires("leave thin cloth", problem("thin", "cloth", "cloth", "open")),),
    near=(near("another problem", name="perished"),),
)
