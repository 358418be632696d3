"""Metal set through the cloth is sound, but not wanted."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Metal that is not wanted",
    problem="metal_unwanted",
    stage="open",
    why=(
        "Metal that is sound but out of place in the costume, or in the way of a new fastening, may go; but it leaves "
        "a hole, and the hole needs an answer before the metal is touched."
    ),
    source="common-practice",
    when=(
        given(
            "metal is set in the garment and is to go",
            Trait(role="hardware", place=MATCH.place, slot="state", word="unwanted"),
        ),
    ),
    says="{place} are sound, but they are not wanted.",
    fires=(fires("snaps nobody wants", trait("snaps.state", "hardware", "unwanted")),),
    near=(
        near("metal that may stay", word="sound"),
        near("a zipper's state", role="front_opening"),
    ),
)
