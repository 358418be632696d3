"""Leave it short."""

from advisor.knowledge import Answer, Trait, fires, near, near_with, one_of, problem, trait, unless

rule = Answer(
    title="Leave it short",
    problem="too_short",
    fix="general.fixes.leave",
    why="An end that is a little short may be pushed up or turned back to look meant.",
    source="common-practice",
    when=(
        unless(
            "it is not protective",
            Trait(
                role="cloth",
                slot="protective",
                word=one_of("flame", "visible", "chemical", "medical", "flotation", "sleepwear"),
            ),
        ),
    ),
    fires=(fires("1 in too short", problem("too_short", "leg", "leg_end", "hem", "1 in")),),
    near=(
        near("too long", name="too_long"),
        near_with("a flame resistant garment", trait("cloth.protective", "cloth", "flame")),
    ),
)
