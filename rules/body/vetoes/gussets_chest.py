"""Tight at the chest."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Tight at the chest",
    fix="body.fixes.hip_gussets",
    why="A gusset gives at its foot and nothing at its point.",
    source="common-practice",
    when=(
        given("it is tight at the chest", Trait(place=MATCH.place, role="body_width", slot="tight_at", word="chest")),
    ),
    says="{place} is tight at the chest, and gussets below the waist give nothing there.",
    fires=(
        fires(
            "tight at the chest",
            offered("body_narrow", "body", "body_width", "body.fixes.hip_gussets"),
            problem("body_narrow", "body", "body_width", "girth", "1 in"),
            trait("body.tight_at", "body_width", "chest"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.side_strips"),
        near("tight over the hips only", at=2, word="hip"),
    ),
)
