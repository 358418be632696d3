"""Soap grease out."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Soap grease out",
    problem="stained",
    fix="stain.fixes.soap_grease",
    why="Makeup and oil do not mix with water: soap must take them up first.",
    source="ILL-STAIN",
    when=(given("it is of grease", Trait(place=MATCH.place, role="stain", slot="kind", word="grease")),),
    fires=(
        fires("soap grease out", problem("stained", "stain", "stain", "open"), trait("stain.kind", "stain", "grease")),
    ),
    near=(
        near("another problem", name="button_missing"),
        near("it is of a body", at=1, word="body"),
    ),
)
