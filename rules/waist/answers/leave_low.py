"""A low waist may be left."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a low waist",
    problem="waist_low",
    fix="general.fixes.leave",
    why="A waist that sits low blouses a little and leaves room to bend; worn with a belt many never see it.",
    source="common-practice",
    when=(),
    fires=(fires("1 in low", problem("waist_low", "bodice", "upper_part", "level", "1 in")),),
    near=(near("it sits high", name="waist_high"),),
)
