"""There is a stain, or one that was not rinsed out."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, trait

rule = Find(
    title="A stain",
    problem="stained",
    stage="open",
    why=(
        "Every stain is easiest while it is fresh, and an iron or a dryer sets most of them for good; what "
        "was put on to loosen it must come out as well."
    ),
    source="ILL-STAIN",
    when=(
        given(
            "there is a stain",
            Trait(place=MATCH.place, role="stain", slot="kind", word=one_of("body", "grease", "old", "soaked")),
        ),
    ),
    says="{place} has not been dealt with. Neither iron nor dryer may touch it until it is.",
    fires=(fires("there is a stain", trait("stain.kind", "stain", "body")),),
    near=(near("it was washed out", word="washed out"),),
)
