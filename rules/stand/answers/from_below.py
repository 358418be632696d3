"""Take the lowest button for a missing one."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Take the lowest button for a missing one",
    problem="button_missing",
    fix="stand.fixes.from_below",
    why="No button matches but those that are on it, and the lowest is not seen.",
    source="common-practice",
    when=(
        given(
            "the cloth is whole where it sat", Trait(place=MATCH.place, role="button_stand", slot="missing", word="one")
        ),
    ),
    fires=(
        fires(
            "take the lowest button for a missing one",
            problem("button_missing", "stand", "button_stand", "mend"),
            trait("stand.missing", "button_stand", "one"),
        ),
    ),
    near=(
        near("another problem", name="front_gapes"),
        near("it tore a hole", at=1, word="torn"),
    ),
)
