"""Waistband that does not fasten."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, such_that, trait

FOUND = {
    "lost": "is gone",
    "torn": "has torn out and taken cloth with it",
}

rule = Find(
    title="Waistband that does not fasten",
    problem="band_unfastened",
    stage="closure",
    why="Nothing below it stays in place: the zipper takes the strain it is not made for, and goes next.",
    source="common-practice",
    when=(
        given("it is in that state", Trait(role="waistband", place=MATCH.place, slot="fastening", word=MATCH.word)),
        such_that("it wants mending", lambda word: word in FOUND),
    ),
    reckons={"found": lambda word: FOUND[word]},
    says="What fastens {place} {found}.",
    fires=(
        fires("as found: lost", trait("band.fastening", "waistband", "lost")),
        fires("as found: torn", trait("band.fastening", "waistband", "torn")),
    ),
    near=(
        near("as it should be", word="holds"),
        near("mended", word="pinned"),
        near("another state of it", slot="carries"),
    ),
)
