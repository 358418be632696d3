"""Belt loop that came off."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, such_that, trait

FOUND = {
    "off": "has come off",
    "torn": "has come off and left a hole",
}

rule = Find(
    title="Belt loop that came off",
    problem="loop_off",
    stage="finish",
    why="The belt slides up where the loop is missing, and all of its pull goes to the loops beside it.",
    source="common-practice",
    when=(
        given("it is in that state", Trait(role="waistband", place=MATCH.place, slot="loop", word=MATCH.word)),
        such_that("it wants mending", lambda word: word in FOUND),
    ),
    reckons={"found": lambda word: FOUND[word]},
    says="A belt loop of {place} {found}.",
    fires=(
        fires("as found: off", trait("band.loop", "waistband", "off")),
        fires("as found: torn", trait("band.loop", "waistband", "torn")),
    ),
    near=(
        near("as it should be", word="sound"),
        near("mended", word="sewn on"),
        near("another state of it", slot="carries"),
    ),
)
