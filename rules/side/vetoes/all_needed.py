"""All of the opening is needed."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="All of its length is needed",
    fix="side.fixes.shorten",
    why="A hand or the hips need the length that is there.",
    source="common-practice",
    when=(
        given("all of the opening is needed", Trait(place=MATCH.place, role="side_opening", slot="use", word="needed")),
    ),
    says="All of the length of {place} is needed to reach through or to get in.",
    fires=(
        fires(
            "hands go through",
            offered("gapes", "side_opening", "side_opening", "side.fixes.shorten"),
            problem("gapes", "side_opening", "side_opening", "closure", "1 in"),
            trait("side_opening.use", "side_opening", "needed"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="side.fixes.hook_and_bar"),
        near("half would do", at=2, word="part"),
        near("nobody uses it", at=2, word="idle"),
    ),
)
