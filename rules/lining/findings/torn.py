"""Torn lining."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, such_that, trait

FOUND = {
    "seam": "an open seam",
    "torn": "torn cloth",
}

rule = Find(
    title="Torn lining",
    problem="lining_torn",
    stage="mend",
    why="A foot or a hand goes through it at every dressing and tears it further. Where a seam gave, it may be "
    "too tight as well.",
    source="common-practice",
    when=(
        given("it is in that state", Trait(role="lining", place=MATCH.place, slot="state", word=MATCH.word)),
        such_that("it wants mending", lambda word: word in FOUND),
    ),
    reckons={"found": lambda word: FOUND[word]},
    says="{place} has {found}.",
    fires=(
        fires("as found: seam", trait("lining.state", "lining", "seam")),
        fires("as found: torn", trait("lining.state", "lining", "torn")),
    ),
    near=(
        near("as it should be", word="sound"),
        near("mended", word="patched"),
        near("another state of it", slot="there"),
    ),
)
