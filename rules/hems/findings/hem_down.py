"""Hem that has come down."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, such_that, trait

rule = Find(
    title="Hem that has come down",
    problem="hem_down",
    stage="finish",
    why="It is stepped into and tears, and the crease of the old fold wears white if it is walked on.",
    source="common-practice",
    when=(
        given("it is in that state", Trait(role=MATCH.role, place=MATCH.place, slot="edge", word="down")),
        such_that("it is a lower edge", lambda role: role in ("leg_end", "skirt_end")),
    ),
    says="The hem of {place} has come down.",
    fires=(
        fires("as found: down", trait("leg.edge", "leg_end", "down")),
        fires("a skirt", trait("edge.edge", "skirt_end", "down")),
    ),
    near=(
        near("as it should be", word="sound"),
        near("mended", word="sewn again"),
        near("another state of it", slot="hem"),
        near("a part without such an edge", role="cloth"),
    ),
)
