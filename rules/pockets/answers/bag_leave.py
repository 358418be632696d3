"""Leave a holed bag."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a holed bag",
    problem="pocket_holed",
    fix="general.fixes.leave",
    why="On stage nobody puts a hand in; tell the wearer to keep nothing in it.",
    source="common-practice",
    when=(),
    fires=(fires("as found", problem("pocket_holed", "pocket_bag", "pocket_bags", "mend")),),
    near=(near("another problem", name="press_due"),),
)
