"""Bleach an old stain."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Bleach an old stain",
    problem="stained",
    fix="stain.fixes.bleach",
    why="An old stain is a dye by now; on white cotton or linen that stands it, bleach is left to try.",
    source="ORANGE-EXT",
    when=(given("it is an old one", Trait(place=MATCH.place, role="stain", slot="kind", word="old")),),
    fires=(
        fires("bleach an old stain", problem("stained", "stain", "stain", "open"), trait("stain.kind", "stain", "old")),
    ),
    near=(
        near("another problem", name="button_missing"),
        near("it is fresh", at=1, word="body"),
    ),
)
