"""Only the back is loose."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Only the back is loose",
    fix=("body.fixes.take_in_sides", "body.fixes.take_in_sides_felled"),
    why="Taken in at the sides, a loose back drags the seams behind the arms and strains the front.",
    source="common-practice",
    when=(given("only the back is loose", Trait(place=MATCH.place, role="body_width", slot="loose_at", word="back")),),
    says=(
        "Only the back of {place} is loose: taken in at the sides, the seams would swing to the back and the "
        "front would pull."
    ),
    fires=(
        fires(
            "only the back is loose",
            offered("body_wide", "body", "body_width", "body.fixes.take_in_sides"),
            problem("body_wide", "body", "body_width", "girth", "2 in"),
            trait("body.loose_at", "body_width", "back"),
        ),
        fires(
            "only the back is loose; the other way",
            offered("body_wide", "body", "body_width", "body.fixes.take_in_sides_felled"),
            problem("body_wide", "body", "body_width", "girth", "2 in"),
            trait("body.loose_at", "body_width", "back"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.back_darts"),
        near("loose all round", at=2, word="round"),
    ),
)
