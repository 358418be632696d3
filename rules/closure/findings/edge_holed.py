"""Fastenings were taken off and left holes in the edge."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Holes where fastenings were",
    problem="edge_holed",
    stage="finish",
    why="A hole in an edge that is pulled all day tears further, first under the next fastening.",
    source="common-practice",
    when=(
        given(
            "fastenings left holes in the edge",
            Trait(role="front_opening", place=MATCH.place, slot="old_holes", word="there"),
        ),
    ),
    says="There are holes in the edge of {place} where fastenings were.",
    fires=(fires("snaps came off", trait("front.old_holes", "front_opening", "there")),),
    near=(
        near("they are mended", word="mended"),
        near("it is another opening", role="side_opening"),
        near("it is something else", slot="kind"),
    ),
)
