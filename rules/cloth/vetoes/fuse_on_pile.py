"""No fusing on a pile."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No fusing on a pile",
    fix="cloth.fixes.fuse_stay",
    why="The press that fuses a stay lays a pile flat for good.",
    source="common-practice",
    when=(given("the cloth has a pile", Trait(role="cloth", slot="surface", word="pile")),),
    says="The press that fuses a stay would flatten the pile.",
    fires=(
        fires(
            "no fusing on a pile",
            offered("thin", "cloth", "cloth", "cloth.fixes.fuse_stay"),
            problem("thin", "cloth", "cloth", "open"),
            trait("cloth.surface", "cloth", "pile"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("a plain surface", at=2, word="plain"),
    ),
)
