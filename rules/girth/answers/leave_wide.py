"""A wide waist may be left where the garment hangs from the shoulders."""

from advisor.knowledge import Answer, Trait, fires, given, near, near_without, problem, trait

rule = Answer(
    title="Leave a wide waist below a bodice",
    problem="too_wide",
    fix="general.fixes.leave",
    why="A one-piece hangs from the shoulders, so a loose waist does not fall; a belt may do.",
    source="common-practice",
    when=(given("a part is sewn on above", Trait(role="upper_part", slot="fold")),),
    fires=(
        fires(
            "1/2 in too wide",
            problem("too_wide", "trousers", "lower_part", "girth", "1/2 in"),
            trait("bodice.fold", "upper_part", "flat"),
        ),
    ),
    near=(
        near("too narrow instead", name="too_narrow"),
        near("another state of the bodice", at=1, slot="rows"),
        near_without("nothing above it", at=1),
    ),
)
