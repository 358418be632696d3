"""Leave it long."""

from advisor.knowledge import Answer, Trait, fires, near, near_with, one_of, problem, trait, unless

rule = Answer(
    title="Leave it long",
    problem="too_long",
    fix="general.fixes.leave",
    why="An end that is a little long can be rolled or turned back for one wearer and let down for the next.",
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
    fires=(fires("2 in too long", problem("too_long", "leg", "leg_end", "hem", "2 in")),),
    near=(
        near("too short", name="too_short"),
        near_with("a flame resistant garment", trait("cloth.protective", "cloth", "flame")),
    ),
)
