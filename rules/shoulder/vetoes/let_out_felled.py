"""Felled armholes hold nothing."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Felled armholes hold nothing",
    fix="shoulder.fixes.let_out",
    why=("In a felled seam one layer is trimmed and the other folded over it: there is nothing left to let out."),
    source="common-practice",
    when=(
        given("the armhole seams are felled", Trait(place=MATCH.place, role="shoulder", slot="armhole", word="felled")),
    ),
    says=("The armhole seams are felled: one layer was trimmed and the other folded over it, and they hold nothing."),
    fires=(
        fires(
            "felled armholes hold nothing",
            offered("shoulder_narrow", "shoulder", "shoulder", "shoulder.fixes.let_out"),
            problem("shoulder_narrow", "shoulder", "shoulder", "girth", "1/8 in"),
            trait("shoulder.armhole", "shoulder", "felled"),
        ),
    ),
    near=(
        near("another fix", fix="general.fixes.leave"),
        near("ordinary seams", at=2, word="plain"),
    ),
)
