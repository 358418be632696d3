"""The waist seam was opened and not sewn again."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Waist seam left open",
    problem="seam_left_open",
    stage="finish",
    why="What was unpicked to get at the work must be sewn again.",
    source="common-practice",
    when=(given("the seam is open", Trait(role="waist_seam", slot="seam", word="open", place=MATCH.place)),),
    says="{place} is still open.",
    fires=(fires("unpicked", trait("waist.seam", "waist_seam", "open")),),
    near=(
        near("sewn again", word="sewn"),
        near("another state of the seam", slot="casing"),
        near("a slit that is meant to be open", role="side_opening"),
    ),
)
