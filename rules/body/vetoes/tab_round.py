"""A tab draws in the waist only."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="A tab draws in the waist only",
    fix="body.fixes.back_tab",
    why="A tab pulls where it sits; above it the cloth hangs as wide as before.",
    source="common-practice",
    when=(given("it is loose all round", Trait(place=MATCH.place, role="body_width", slot="loose_at", word="round")),),
    says="{place} is loose all round: a tab at the back of the waist would leave the chest as wide as it is.",
    fires=(
        fires(
            "a tab draws in the waist only",
            offered("body_wide", "body", "body_width", "body.fixes.back_tab"),
            problem("body_wide", "body", "body_width", "girth", "2 in"),
            trait("body.loose_at", "body_width", "round"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.take_in_sides"),
        near("loose at the waist only", at=2, word="waist"),
    ),
)
