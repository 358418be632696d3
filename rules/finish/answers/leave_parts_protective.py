"""Leave the small parts of a protective garment to its maker."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, near_without, one_of, problem, trait

rule = Answer(
    title="Leave small parts of protective wear to the maker",
    problem="small_parts",
    fix="general.fixes.leave",
    why="What gives when it is pulled would have to be sewn on again, and nothing is sewn on protective wear here. "
    "Tell whoever it is handed to that a child wears it and every small part must hold.",
    source="common-practice",
    when=(
        given(
            "the garment is protective",
            Trait(
                role="cloth",
                slot="protective",
                word=one_of("flame", "visible", "chemical", "medical", "flotation", "sleepwear"),
                place=MATCH.cloth,
            ),
        ),
    ),
    fires=(
        fires(
            "a child's sleepwear",
            problem("small_parts", "wearer", "wearer", "finish"),
            trait("cloth.protective", "cloth", "sleepwear"),
        ),
    ),
    near=(
        near("another problem", name="press_due"),
        near("ordinary clothes", at=1, word="no"),
        near_without("nobody said what it protects from", at=1),
    ),
)
