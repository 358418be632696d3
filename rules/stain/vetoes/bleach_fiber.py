"""No bleach on silk, wool or coatings."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, one_of, problem, trait

rule = Veto(
    title="No bleach on silk, wool or coatings",
    fix="stain.fixes.bleach",
    why="Chlorine bleach eats silk and wool, and a cleaners' institute keeps it off both; coatings it lifts, by common "
    "practice.",
    source="DLI-BLEACH",
    when=(
        given(
            "it is silk, wool or coated",
            Trait(place=MATCH.cloth, role="cloth", slot="kind", word=one_of("silk", "wool", "coated")),
        ),
    ),
    says="Bleach is not for silk, wool, leather or coated cloth.",
    fires=(
        fires(
            "no bleach on silk, wool or coatings",
            offered("stained", "stain", "stain", "stain.fixes.bleach"),
            problem("stained", "stain", "stain", "open"),
            trait("cloth.kind", "cloth", "silk"),
        ),
    ),
    near=(
        near("another fix", fix="stain.fixes.cover"),
        near("it is cotton", at=2, word="cotton"),
    ),
)
