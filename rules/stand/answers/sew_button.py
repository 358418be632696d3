"""Sew a missing button on."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Sew a missing button on",
    problem="button_missing",
    fix="stand.fixes.sew_button",
    why="The cloth is whole and a button is all that is wanting.",
    source="common-practice",
    when=(
        given(
            "the cloth is whole where it sat", Trait(place=MATCH.place, role="button_stand", slot="missing", word="one")
        ),
    ),
    fires=(
        fires(
            "sew a missing button on",
            problem("button_missing", "stand", "button_stand", "mend"),
            trait("stand.missing", "button_stand", "one"),
        ),
    ),
    near=(
        near("another problem", name="front_gapes"),
        near("it tore a hole", at=1, word="torn"),
    ),
)
