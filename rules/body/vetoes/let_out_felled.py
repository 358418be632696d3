"""Felled seams hold nothing."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Felled seams hold nothing",
    fix="body.fixes.let_out_sides",
    why=("In a felled seam one layer is trimmed and the other folded over it: there is nothing left to let out."),
    source="common-practice",
    when=(
        given(
            "the side seams are felled", Trait(place=MATCH.place, role="body_width", slot="side_seam", word="felled")
        ),
    ),
    says=(
        "The side seams of {place} are felled: one layer was trimmed and the other folded over it, and they "
        "hold nothing."
    ),
    fires=(
        fires(
            "felled seams hold nothing",
            offered("body_narrow", "body", "body_width", "body.fixes.let_out_sides"),
            problem("body_narrow", "body", "body_width", "girth", "1 in"),
            trait("body.side_seam", "body_width", "felled"),
        ),
    ),
    near=(
        near("another fix", fix="body.fixes.side_strips"),
        near("ordinary seams", at=2, word="plain"),
    ),
)
