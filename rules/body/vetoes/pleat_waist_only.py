"""Only the waist is loose."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Only the waist is loose",
    fix="body.fixes.back_pleat",
    why=(
        "A pleat from the yoke takes as much between the shoulder blades as at the waist, and there a body "
        "needs it to reach forward."
    ),
    source="common-practice",
    when=(
        given("only the waist is loose", Trait(place=MATCH.place, role="body_width", slot="loose_at", word="waist")),
    ),
    says=("Only the waist of {place} is loose: a pleat down from the yoke would bind across the shoulder blades."),
    fires=(
        fires(
            "only the waist is loose",
            offered("body_wide", "body", "body_width", "body.fixes.back_pleat"),
            problem("body_wide", "body", "body_width", "girth", "2 in"),
            trait("body.loose_at", "body_width", "waist"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.back_darts"),
        near("the whole back is loose", at=2, word="back"),
    ),
)
