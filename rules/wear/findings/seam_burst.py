"""A seam has given way."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, trait

rule = Find(
    title="A seam has given way",
    problem="seam_burst",
    stage="mend",
    why="A seam bursts because its thread is old, or because the garment is too small there: sewn again without room "
    "it bursts again beside the new stitches.",
    source="KY-CT147",
    when=(
        given(
            "a seam has given way",
            Trait(role="worn_place", place=MATCH.place, slot="burst", word=one_of("burst", "torn")),
        ),
    ),
    says="A seam has given way, at {place} or beside it. Find out first whether it was strained: then it is let out "
    "too.",
    fires=(
        fires("as found: burst", trait("worn.burst", "worn_place", "burst")),
        fires("as found: torn", trait("worn.burst", "worn_place", "torn")),
    ),
    near=(
        near("sound", word="sound"),
        near("pinned for tonight", word="pinned"),
        near("it is the cloth that is so", slot="holes"),
    ),
)
