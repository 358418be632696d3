"""It is not white."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="It is not white",
    fix="stain.fixes.bleach",
    why="Bleach takes the color of the garment before it takes the stain.",
    source="ORANGE-EXT",
    when=(given("it is not white", Trait(place=MATCH.place, role="stain", slot="white", word="no")),),
    says="It is not white all over: bleach would take its color with the stain.",
    fires=(
        fires(
            "it is not white",
            offered("stained", "stain", "stain", "stain.fixes.bleach"),
            problem("stained", "stain", "stain", "open"),
            trait("stain.white", "stain", "no"),
        ),
    ),
    near=(
        near("another fix", fix="stain.fixes.cover"),
        near("it is white", at=2, word="yes"),
    ),
)
