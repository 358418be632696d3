"""The garment protects from chemicals, cuts or an arc, is medical, or keeps afloat."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, trait

rule = Find(
    title="Other protective garment",
    problem="protective",
    stage="open",
    why=(
        "Every needle hole lets in what it should keep out, and seams, closures and fit are part of what was tested. "
        "Families, from memory: EN 14605 chemical, EN 388 cut, IEC 61482 arc, EN 13795 medical, ISO 12402 flotation."
    ),
    source="from-memory",
    when=(
        given(
            "the garment is protective in another way",
            Trait(role="cloth", place=MATCH.place, slot="protective", word=one_of("chemical", "medical", "flotation")),
        ),
        given("it has not been handed over", Trait(place=MATCH.place, role="cloth", slot="fate", word="kept")),
    ),
    says=(
        "It is protective clothing, tested as it was made: every needle hole and every change of fit may end its "
        "protection. Its label names the standard."
    ),
    fires=(
        fires(
            "a chemical suit",
            trait("cloth.protective", "cloth", "chemical"),
            trait("cloth.fate", "cloth", "kept"),
        ),
    ),
    near=(
        near("an ordinary garment", word="no"),
        near("flame resistant: another family of standards", word="flame"),
        near("handed over already", at=1, word="handed over"),
    ),
)
