"""No fusing on silk or leather."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, one_of, problem, trait

rule = Veto(
    title="No fusing on silk or leather",
    fix="cloth.fixes.fuse_stay",
    why="Glue strikes through silk and does not hold on leather or coatings, which melt.",
    source="common-practice",
    when=(
        given("the cloth is silk, leather or coated", Trait(role="cloth", slot="kind", word=one_of("silk", "coated"))),
    ),
    says="A fused stay is not for silk, leather or coated cloth.",
    fires=(
        fires(
            "no fusing on silk or leather",
            offered("thin", "cloth", "cloth", "cloth.fixes.fuse_stay"),
            problem("thin", "cloth", "cloth", "open"),
            trait("cloth.kind", "cloth", "silk"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("it is wool", at=2, word="wool"),
    ),
)
