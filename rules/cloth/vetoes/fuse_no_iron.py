"""No fusing where no iron may go."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No fusing where no iron may go",
    fix="cloth.fixes.fuse_stay",
    why="A stay is fused with heat the label forbids.",
    source="GINETEX",
    when=(given("the label forbids ironing", Trait(role="cloth", slot="iron", word="no")),),
    says="The label shows an iron crossed out: nothing may be fused to it.",
    fires=(
        fires(
            "no fusing where no iron may go",
            offered("thin", "cloth", "cloth", "cloth.fixes.fuse_stay"),
            problem("thin", "cloth", "cloth", "open"),
            trait("cloth.iron", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("three dots", at=2, word="three"),
    ),
)
