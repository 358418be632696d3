"""The edges of the opening are raw."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Bare edges of the opening",
    problem="edge_bare",
    # Last of all: whatever is sewn to an edge before then finishes it.
    stage="finish",
    why="A raw edge frays with every opening and washing, and what is sewn close to it pulls out.",
    source="common-practice",
    when=(
        given(
            "the edges of the opening are bare",
            Trait(role="front_opening", place=MATCH.place, slot="edge", word="bare"),
        ),
    ),
    says="The edges of {place} are bare.",
    fires=(fires("a zipper was torn out", trait("front.edge", "front_opening", "bare")),),
    near=(
        near("they are finished", word="finished"),
        near("it is another opening", role="side_opening"),
        near("it is something else", slot="kind"),
    ),
)
