"""Soak what a body made."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Soak what a body made",
    problem="stained",
    fix="stain.fixes.soak_cold",
    why="Sweat, blood, milk and food come out with cold water as long as they were not heated.",
    source="ILL-STAIN",
    when=(given("it is of a body or of food", Trait(place=MATCH.place, role="stain", slot="kind", word="body")),),
    fires=(
        fires(
            "soak what a body made", problem("stained", "stain", "stain", "open"), trait("stain.kind", "stain", "body")
        ),
    ),
    near=(
        near("another problem", name="button_missing"),
        near("it is of grease", at=1, word="grease"),
    ),
)
