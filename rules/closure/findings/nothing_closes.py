"""What closed the opening was taken out."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Nothing closes the opening",
    problem="closure_missing",
    stage="closure",
    why="An opening without a closure stands open, and its edges stretch and fray.",
    source="common-practice",
    when=(
        given(
            "nothing closes the opening",
            Trait(role="front_opening", place=MATCH.place, slot="kind", word="none"),
        ),
    ),
    says="Nothing closes {place}.",
    fires=(fires("the zipper was taken out", trait("front.kind", "front_opening", "none")),),
    near=(
        near("a zipper closes it", word="closed_end"),
        near("it is another opening", role="side_opening"),
        near("it is something else that is not there", slot="edge"),
    ),
)
