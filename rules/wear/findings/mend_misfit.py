"""A patch or darn does not run from sound cloth to sound cloth."""

from advisor.knowledge import MATCH, Find, Measure, Mm, Trait, fires, given, length, measure, near, such_that, trait
from advisor.operations.worn import wide

CLOSED = ("backed", "stayed", "patched", "covered", "darned", "glued", "fused")


def amount(word: str, where: str, hole: Mm, weak: Mm, cover: Mm) -> Mm:
    return abs(cover - wide(word, where, hole, weak))


rule = Find(
    title="A mend of the wrong size",
    problem="mend_misfit",
    stage="finish",
    why="A patch that ends in weak cloth tears out along its edge; one larger than it need be is stiff and shows. It "
    "reaches 3/4 in onto sound cloth, further at seats and knees, a darn or a fused piece 1/2 in.",
    source="SCHOOLSEW-P",
    when=(
        given("a worn place was closed", Trait(role="worn_place", place=MATCH.place, slot="holes", word=MATCH.word)),
        given("it is known where it is", Trait(place=MATCH.place, role="worn_place", slot="where", word=MATCH.where)),
        given("the hole was measured", Measure(place=MATCH.place, role="worn_place", slot="hole", mm=MATCH.hole)),
        given("the weak cloth too", Measure(place=MATCH.place, role="worn_place", slot="weak", mm=MATCH.weak)),
        given("and what closes it", Measure(place=MATCH.place, role="worn_place", slot="cover", mm=MATCH.cover)),
        such_that("something closes it", lambda word: word in CLOSED),
        such_that(
            "it is not as wide as it must be",
            lambda word, where, hole, weak, cover: cover != wide(word, where, hole, weak),
        ),
    ),
    amount=amount,
    reckons={"wanted": lambda word, where, hole, weak: wide(word, where, hole, weak)},
    says="The mend at {place} is {cover} wide; it should be {wanted}.",
    fires=(
        fires(
            "a patch that ends in weak cloth",
            trait("worn.holes", "worn_place", "patched"),
            trait("worn.where", "worn_place", "elsewhere"),
            measure("worn.hole", "worn_place", "1 in"),
            measure("worn.weak", "worn_place", "1/2 in"),
            measure("worn.cover", "worn_place", "2 1/2 in"),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("still open", word="open"),
        near("as wide as it must be", at=4, mm=length("3 1/2 in")),
        near("firm cloth round it", at=3, mm=length("0 in")),
        near("it is where snaps sat", at=0, role="hardware"),
        near("where it is, is said of something else", at=1, role="hardware"),
        near("the hole of something else was measured", at=2, role="hardware"),
    ),
)
