"""A seam was opened, or basted, and not sewn."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, such_that, trait

# Side openings are meant to be open, and the waist seam has a card of its own.
ELSEWHERE = ("side_opening", "waist_seam")

rule = Find(
    title="Seam left open",
    problem="seam_left_open",
    stage="finish",
    why="What was unpicked to get at the work must be sewn again, and basting holds for a fitting and no longer.",
    source="common-practice",
    when=(
        given(
            "a seam is open or only basted",
            Trait(
                place=MATCH.place,
                role=MATCH.role,
                slot=MATCH.slot,
                word=one_of("open", "basted"),
            ),
        ),
        such_that(
            "it is a seam, and not a slit that is meant to be open",
            lambda role, slot: (
                slot in ("center_back", "sides", "inseams", "outseams", "beside")
                or (slot == "seam" and role not in ELSEWHERE)
            ),
        ),
    ),
    says="A seam at {place} is still open or only basted.",
    fires=(
        fires("the seam that holds a band on", trait("band.seam", "waistband", "open")),
        fires("the center back of the lower part", trait("trousers.center_back", "lower_part", "open")),
        fires("the seams beside a slit", trait("side_opening.beside", "side_opening", "open")),
    ),
    near=(
        near("sewn again", word="sewn"),
        near("a slit that is meant to be open", role="side_opening"),
        near("another state of the band", slot="piece"),
    ),
)
