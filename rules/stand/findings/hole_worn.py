"""A buttonhole is frayed or torn."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, trait

rule = Find(
    title="A worn buttonhole",
    problem="buttonhole_worn",
    stage="mend",
    why=(
        "A buttonhole whose stitching goes frays to its end and then tears toward the edge; after that no button holds."
    ),
    source="common-practice",
    when=(
        given(
            "a buttonhole is frayed or torn",
            Trait(place=MATCH.place, role="button_stand", slot="hole", word=one_of("frayed", "torn")),
        ),
    ),
    says="A buttonhole of {place} is frayed or torn.",
    fires=(fires("a buttonhole is frayed or torn", trait("stand.hole", "button_stand", "frayed")),),
    near=(near("the holes are sound", word="sound"),),
)
