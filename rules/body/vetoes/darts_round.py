"""Loose at the chest too."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Loose at the chest too",
    fix="body.fixes.back_darts",
    why="A dart pointed at both ends is widest at the waist and takes nothing at the chest.",
    source="IKAT",
    when=(given("it is loose all round", Trait(place=MATCH.place, role="body_width", slot="loose_at", word="round")),),
    says="{place} is loose all round, and long darts take nothing out at the chest.",
    fires=(
        fires(
            "loose at the chest too",
            offered("body_wide", "body", "body_width", "body.fixes.back_darts"),
            problem("body_wide", "body", "body_width", "girth", "2 in"),
            trait("body.loose_at", "body_width", "round"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.take_in_sides"),
        near("loose at the waist only", at=2, word="waist"),
    ),
)
