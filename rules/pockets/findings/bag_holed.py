"""Hole in a pocket bag."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, such_that, trait

FOUND = {
    "holed": "a small hole",
    "worn": "a lower half that is worn through",
}

rule = Find(
    title="Hole in a pocket bag",
    problem="pocket_holed",
    stage="mend",
    why="Keys and coins wear a bag through from inside, and whatever falls through is not found again.",
    source="LTA-POCKET",
    when=(
        given("it is in that state", Trait(role="pocket_bags", place=MATCH.place, slot="bag", word=MATCH.word)),
        such_that("it wants mending", lambda word: word in FOUND),
    ),
    reckons={"found": lambda word: FOUND[word]},
    says="{place} have {found}.",
    fires=(
        fires("as found: holed", trait("pocket_bag.bag", "pocket_bags", "holed")),
        fires("as found: worn", trait("pocket_bag.bag", "pocket_bags", "worn")),
    ),
    near=(
        near("as it should be", word="sound"),
        near("mended", word="patched"),
        near("another state of it", slot="half"),
    ),
)
