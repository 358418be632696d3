"""Take a wide seat in at a felled center back."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Take a wide seat in at a felled center back",
    problem="hip_wide",
    fix="hip.fixes.center_back_felled",
    why="On jeans the sides are felled and carry pockets and rivets: the seat seam is the one place left, at more "
    "work.",
    source="NINEL",
    when=(given("the seam is felled", Trait(role="lower_part", slot="center_seam", word="felled", place=MATCH.lower)),),
    fires=(
        fires(
            "2 in too wide",
            problem("hip_wide", "hip", "hip", "level", "2 in"),
            trait("trousers.center_seam", "lower_part", "felled"),
        ),
    ),
    near=(
        near("too narrow instead", name="hip_narrow"),
        near("an ordinary seam", at=1, word="plain"),
    ),
)
