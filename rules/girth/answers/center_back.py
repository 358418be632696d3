"""The center-back seam answers a waist that is too wide, unless it is felled."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, near_without, one_of, problem, trait

rule = Answer(
    title="Take a wide waist in at center back",
    problem="too_wide",
    fix="girth.fixes.center_back",
    why="One seam takes the whole amount, half from each side of the center, and runs out over the seat where the "
    "looseness ends.",
    source="THEISM",
    when=(
        given(
            "the seam is not felled",
            Trait(role="lower_part", slot="center_seam", word=one_of("plain", "closed"), place=MATCH.place),
        ),
    ),
    fires=(
        fires(
            "2 in too wide",
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("trousers.center_seam", "lower_part", "plain"),
        ),
    ),
    near=(
        near("too narrow instead", name="too_narrow"),
        near("a felled seam", at=1, word="felled"),
        near_without("nobody looked at the seam", at=1),
    ),
)
