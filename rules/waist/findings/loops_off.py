"""Loops or label were taken off the band and not put back."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, near_without, such_that, trait
from advisor.operations.band_loops import CALLED

rule = Find(
    title="Loops or label off the waistband",
    problem="loops_off",
    stage="finish",
    why="A belt without a loop at center back rides up over the band as soon as she sits, and a label leaves a dark, "
    "pricked field where it sat.",
    source="common-practice",
    when=(
        given("what sat on the band is off", Trait(role="waistband", slot="carried", word="off", place=MATCH.place)),
        given("it is known what sat there", Trait(slot="carries", place=MATCH.place, word=MATCH.what)),
        such_that("it was loops or a label", lambda what: what in CALLED),
    ),
    reckons={"sat": lambda what: CALLED[what]},
    says="Where {place} was worked on, {sat} came off.",
    fires=(
        fires(
            "loops",
            trait("band.carried", "waistband", "off"),
            trait("band.carries", "waistband", "loops"),
        ),
        fires(
            "a label too",
            trait("band.carried", "waistband", "off"),
            trait("band.carries", "waistband", "both"),
        ),
    ),
    near=(
        near("sewn on again", word="set"),
        near("another state of the band", slot="piece"),
        near("nothing sat there", at=1, word="nothing"),
        near_without("it is not known what sat there", at=1),
    ),
)
