"""The garment is a child's sleepwear."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="A child's sleepwear",
    problem="protective",
    stage="open",
    why=(
        "In the USA a child's sleepwear must resist flame or fit tightly, with a greatest measure at chest, waist, "
        "seat, arm and leg. Letting out, adding cloth or trimming breaks either. Robes and loungewear count as "
        "sleepwear. Infant sizes up to 9 months are exempt, in one piece no longer than 64.8 cm."
    ),
    source="CPSC-SLEEP",
    when=(
        given(
            "the garment is a child's sleepwear",
            Trait(role="cloth", place=MATCH.place, slot="protective", word="sleepwear"),
        ),
        given("it has not been handed over", Trait(place=MATCH.place, role="cloth", slot="fate", word="kept")),
    ),
    says=(
        "It is a child's sleepwear (16 CFR 1615 and 1616): let out, added to or trimmed, it may no longer be safe near "
        "a flame."
    ),
    fires=(
        fires(
            "a tight pair of pajamas",
            trait("cloth.protective", "cloth", "sleepwear"),
            trait("cloth.fate", "cloth", "kept"),
        ),
    ),
    near=(
        near("an ordinary garment", word="no"),
        near("flame resistant: another family of standards", word="flame"),
        near("handed over already", at=1, word="handed over"),
    ),
)
