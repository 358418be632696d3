"""Back the tear of a missing button."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Back the tear of a missing button",
    problem="button_missing",
    fix="stand.fixes.back_and_sew",
    why="The button tore a hole, so the cloth is seen to first.",
    source="common-practice",
    when=(given("it tore a hole", Trait(place=MATCH.place, role="button_stand", slot="missing", word="torn")),),
    fires=(
        fires(
            "back the tear of a missing button",
            problem("button_missing", "stand", "button_stand", "mend"),
            trait("stand.missing", "button_stand", "torn"),
        ),
    ),
    near=(
        near("another problem", name="front_gapes"),
        near("the cloth is whole", at=1, word="one"),
    ),
)
