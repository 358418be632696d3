"""Take a wide seat in at center back."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, one_of, problem, trait

rule = Answer(
    title="Take a wide seat in at center back",
    problem="hip_wide",
    fix="hip.fixes.center_back",
    why="Where the spare cloth hangs in the seat and the sides lie well, the seat seam takes it out, half from each "
    "side.",
    source="SCL",
    when=(
        given(
            "the seam is not felled",
            Trait(role="lower_part", slot="center_seam", word=one_of("plain", "closed"), place=MATCH.lower),
        ),
    ),
    fires=(
        fires(
            "2 in too wide",
            problem("hip_wide", "hip", "hip", "level", "2 in"),
            trait("trousers.center_seam", "lower_part", "plain"),
        ),
    ),
    near=(
        near("too narrow instead", name="hip_narrow"),
        near("a felled seam", at=1, word="felled"),
    ),
)
