"""A cutting line was marked and nothing was cut on it."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Line marked and not cut",
    problem="line_left_marked",
    stage="finish",
    why="A mark that was not used misleads the next pair of hands, and chalk or wax that meets an iron stays.",
    source="common-practice",
    when=(
        given(
            "a line is marked and not cut",
            Trait(place=MATCH.place, role=MATCH.role, slot="line", word="marked"),
        ),
    ),
    says="A line is marked at {place}, and nothing was cut on it.",
    fires=(fires("a new waist line", trait("waist.line", "waist_seam", "marked")),),
    near=(near("cut on it", word="cut"), near("another state of the seam", slot="inset")),
)
