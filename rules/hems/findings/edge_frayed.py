"""Frayed hem edge."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, such_that, trait

rule = Find(
    title="Frayed hem edge",
    problem="edge_frayed",
    stage="finish",
    why="A fold that drags on the floor or rubs on a shoe wears through at the back first, and the fray runs up "
    "from there.",
    source="MP-482",
    when=(
        given("it is in that state", Trait(role=MATCH.role, place=MATCH.place, slot="edge", word="frayed")),
        such_that("it is a lower edge", lambda role: role in ("leg_end", "skirt_end")),
    ),
    says="The edge of {place} is frayed or worn through.",
    fires=(
        fires("as found: frayed", trait("leg.edge", "leg_end", "frayed")),
        fires("a skirt", trait("edge.edge", "skirt_end", "frayed")),
    ),
    near=(
        near("as it should be", word="sound"),
        near("mended", word="bound"),
        near("another state of it", slot="hem"),
        near("a part without such an edge", role="cloth"),
    ),
)
