"""The garment is high visibility clothing."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="High visibility garment",
    problem="protective",
    stage="open",
    why=(
        "The class is set by the smallest area of bright cloth and reflecting band that stays in sight. The lowest "
        "band must lie 50 mm (2 in) above the edge and a sleeve band as far from the end of the sleeve, so even a hem "
        "can cost the class."
    ),
    source="CR-20471",
    when=(
        given(
            "the garment is high visibility clothing",
            Trait(role="cloth", place=MATCH.place, slot="protective", word="visible"),
        ),
        given("it has not been handed over", Trait(place=MATCH.place, role="cloth", slot="fate", word="kept")),
    ),
    says=(
        "It is high visibility clothing (EN ISO 20471): a hem or a seam taken in may cover or move what makes it seen."
    ),
    fires=(
        fires(
            "a vest with reflecting bands",
            trait("cloth.protective", "cloth", "visible"),
            trait("cloth.fate", "cloth", "kept"),
        ),
    ),
    near=(
        near("an ordinary garment", word="no"),
        near("flame resistant: another family of standards", word="flame"),
        near("handed over already", at=1, word="handed over"),
    ),
)
