"""Leave a wide waist that hangs."""

from advisor.knowledge import Answer, Trait, fires, near, near_with, problem, trait, unless

rule = Answer(
    title="Leave a wide waist that hangs",
    problem="too_wide",
    fix="general.fixes.leave",
    why="A belt holds about 1 in in folds; more than that slides down with every step.",
    source="common-practice",
    when=(unless("a part is sewn on above", Trait(role="upper_part", slot="fold")),),
    fires=(
        fires(
            "1 in too wide",
            problem("too_wide", "trousers", "lower_part", "girth", "1 in"),
        ),
    ),
    near=(
        near("too narrow instead", name="too_narrow"),
        near_with("a bodice hangs above", trait("bodice.fold", "upper_part", "flat")),
    ),
)
