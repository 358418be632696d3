"""Too deep a hem for a curve."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Too deep a hem for a curve",
    fix="tail.fixes.wide_hem",
    why=("A hem 1/2 in deep on the curve of a tail is longer at its edge than where it lands, and stands in folds."),
    source="common-practice",
    when=(given("the edge is curved", Trait(place=MATCH.place, role="body_hem", slot="shape", word="curved")),),
    says="{place} is curved: a hem 1/2 in deep would stand in folds on the curve; a narrow one goes round it.",
    fires=(
        fires(
            "too deep a hem for a curve",
            offered("tail_long", "tail", "body_hem", "tail.fixes.wide_hem"),
            problem("tail_long", "tail", "body_hem", "hem", "2 in"),
            trait("tail.shape", "body_hem", "curved"),
        ),
    ),
    near=(
        near("another fix", fix="tail.fixes.narrow_hem"),
        near("a straight edge", at=2, word="straight"),
    ),
)
