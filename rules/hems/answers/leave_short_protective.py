"""Leave a protective garment short."""

from advisor.knowledge import Answer, Trait, fires, given, near, near_without, one_of, problem, trait

rule = Answer(
    title="Leave it short until it is handed over",
    problem="too_short",
    fix="general.fixes.leave",
    why="Add nothing to it and do not push it up: what it leaves bare it does not protect. Say how much it lacks where "
    "you hand it over, or take another size.",
    source="common-practice",
    when=(
        given(
            "it is protective",
            Trait(
                role="cloth",
                slot="protective",
                word=one_of("flame", "visible", "chemical", "medical", "flotation", "sleepwear"),
            ),
        ),
    ),
    fires=(
        fires(
            "a flame resistant garment",
            problem("too_short", "leg", "leg_end", "hem", "1 in"),
            trait("cloth.protective", "cloth", "flame"),
        ),
    ),
    near=(
        near("too long", name="too_long"),
        near("an ordinary garment", at=1, word="no"),
        near_without("nobody looked whether it is", at=1),
    ),
)
