"""A felled center-back seam answers a waist that is too wide, at more work."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, near_without, problem, trait

rule = Answer(
    title="Take a wide waist in at a felled center back",
    problem="too_wide",
    fix="girth.fixes.center_back_felled",
    why="One seam takes the whole amount. It is felled, so two rows of stitching and a folded edge must be opened and "
    "made again; on jeans it is still the easiest place, for the sides are felled too and carry pockets and rivets.",
    source="NINEL",
    when=(
        given(
            "the seam is felled or topstitched",
            Trait(role="lower_part", slot="center_seam", word="felled", place=MATCH.place),
        ),
    ),
    fires=(
        fires(
            "2 in too wide",
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("trousers.center_seam", "lower_part", "felled"),
        ),
    ),
    near=(
        near("too narrow instead", name="too_narrow"),
        near("an ordinary seam", at=1, word="plain"),
        near_without("nobody looked at the seam", at=1),
    ),
)
