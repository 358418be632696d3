"""A patch or darn that does not run from sound cloth to sound cloth."""

from advisor.figures.exact import inches
from advisor.figures.patches import finished
from advisor.knowledge import MATCH, Find, Measure, Mm, Trait, fires, given, near, such_that
from advisor.knowledge.examples import length, measure, trait

PATCH = inches("3/4")
BEYOND = {
    "patched": PATCH, "hemmed": PATCH, "glued": PATCH, "filled": PATCH, "buttoned": PATCH, "renewed": PATCH,
    "darned": inches("1/2"),
}  # fmt: skip


def needed(word: str, hole: Mm, weak: Mm) -> Mm:
    return finished(hole, weak, BEYOND.get(word, PATCH))


def amount(word: str, hole: Mm, weak: Mm, cover: Mm) -> Mm:
    return abs(cover - needed(word, hole, weak))


rule = Find(
    title="A mend that is not as wide as it must be",
    problem="cover_misfit",
    stage="finish",
    why=(
        "A patch that ends in weak cloth tears out along its edge; one that is larger than it needs to be is stiff and "
        "shows. It reaches 3/4 in onto sound cloth on every side, a darn 1/2 in."
    ),
    source="SCHOOLSEW-P",
    when=(
        given(
            "a hole where metal sat has been covered",
            Trait(role="hardware", place=MATCH.place, slot="holes", word=MATCH.word),
        ),
        given(("the hole was measured"), Measure(place=MATCH.place, role="hardware", slot="hole", mm=MATCH.hole)),
        given("the weak cloth too", Measure(place=MATCH.place, role="hardware", slot="weak", mm=MATCH.weak)),
        given("and the cover", Measure(place=MATCH.place, role="hardware", slot="cover", mm=MATCH.cover)),
        such_that("it is closed by a patch or a darn", lambda word: word in BEYOND),
        such_that(
            "the cover is not as wide as the hole asks",
            lambda word, hole, weak, cover: cover != needed(word, hole, weak),
        ),
    ),
    amount=amount,
    reckons={"wide": lambda word, hole, weak: needed(word, hole, weak)},
    says="The mend where {place} sat is {cover} wide; it should be {wide}.",
    fires=(
        fires(
            "a patch measured from the hole and not from sound cloth",
            trait("snaps.holes", "hardware", "patched"),
            measure("snaps.hole", "hardware", "1/4 in"),
            measure("snaps.weak", "hardware", "1/2 in"),
            measure("snaps.cover", "hardware", "1 3/4 in"),
            amount=length("1 in"),
        ),
    ),
    near=(
        near("buttonholes of a front opening", role="front_opening"),
        near("it is not closed yet", word="open"),
        near("as wide as it must be", at=3, mm=length("2 3/4 in")),
        near("the cloth round it is sound", at=2, mm=length("0 in")),
        near("the hole is wide of another place", at=1, role="front_opening"),
    ),
)
