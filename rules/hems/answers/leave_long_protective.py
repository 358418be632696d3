"""Leave a protective garment long."""

from advisor.knowledge import Answer, Trait, fires, given, near, near_without, one_of, problem, trait

rule = Answer(
    title="Leave it long until it is handed over",
    problem="too_long",
    fix="general.fixes.leave",
    why="Do not roll, pin or tape it up: a fold catches sparks or hides what is to be seen, and a leg too long trips. "
    "Say how much too long it is where you hand it over, or take another size.",
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
            problem("too_long", "leg", "leg_end", "hem", "2 in"),
            trait("cloth.protective", "cloth", "flame"),
        ),
    ),
    near=(
        near("too short", name="too_short"),
        near("an ordinary garment", at=1, word="no"),
        near_without("nobody looked whether it is", at=1),
    ),
)
