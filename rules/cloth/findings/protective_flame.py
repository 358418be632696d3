"""The garment is flame resistant."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, near_without, trait

rule = Find(
    title="Flame resistant garment",
    problem="protective",
    stage="open",
    why=(
        "Ordinary thread, patches and hardware burn or melt where the garment would not, and a garment altered so that "
        "it shows is taken out of service. Its employer decides about it (NFPA 2113), and only with cloth, thread and "
        "metal of its own kind is it mended. Families: NFPA 2112 and 2113, EN ISO 11612 (numbers of the last from "
        "memory)."
    ),
    source="NFPA2113",
    when=(
        given(
            "the garment is flame resistant",
            Trait(role="cloth", place=MATCH.place, slot="protective", word="flame"),
        ),
        given("it has not been handed over", Trait(place=MATCH.place, role="cloth", slot="fate", word="kept")),
    ),
    says="It is flame resistant (NFPA 2112 and 2113, EN ISO 11612): altered here, it may burn where it should protect.",
    fires=(
        fires(
            "a flame resistant coverall",
            trait("cloth.protective", "cloth", "flame"),
            trait("cloth.fate", "cloth", "kept"),
        ),
    ),
    near=(
        near("an ordinary garment", word="no"),
        near("handed over already", at=1, word="handed over"),
        near_without("nothing known of what becomes of it", at=1),
    ),
)
