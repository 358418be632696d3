"""A new set for a missing button."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="A new set for a missing button",
    problem="button_missing",
    fix="stand.fixes.new_set",
    why="Where none matches, a whole set matches itself.",
    source="common-practice",
    when=(
        given(
            "the cloth is whole where it sat", Trait(place=MATCH.place, role="button_stand", slot="missing", word="one")
        ),
    ),
    fires=(
        fires(
            "a new set for a missing button",
            problem("button_missing", "stand", "button_stand", "mend"),
            trait("stand.missing", "button_stand", "one"),
        ),
    ),
    near=(
        near("another problem", name="front_gapes"),
        near("it tore a hole", at=1, word="torn"),
    ),
)
