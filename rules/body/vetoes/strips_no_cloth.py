"""No matching cloth for the strips."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for the strips",
    fix="body.fixes.side_strips",
    why=("Strips that nearly match look like a mistake; in another cloth they are a design, which is another fix."),
    source="common-practice",
    when=(given("there is no matching cloth", Trait(place=MATCH.cloth, role="cloth", slot="spare", word="no")),),
    says="There is no matching cloth to hand for two strips that give {amount} together.",
    fires=(
        fires(
            "no matching cloth for the strips",
            offered("body_narrow", "body", "body_width", "body.fixes.side_strips"),
            problem("body_narrow", "body", "body_width", "girth", "1 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.hip_gussets"),
        near("there is cloth", at=2, word="yes"),
    ),
)
