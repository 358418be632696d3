"""Leather and coated cloth do not gather."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="This cloth does not gather",
    fix="edges.fixes.gather",
    why="Stiff cloth does not fall into folds when it is drawn up, and every stitch of the rows leaves a hole.",
    source="common-practice",
    when=(given("the cloth is leather or coated", Trait(role="cloth", slot="kind", word="coated")),),
    says="Leather and coated cloth do not draw up: the folds stand stiff, and each stitch of the rows leaves a hole.",
    fires=(
        fires(
            "a leather bodice",
            offered("wider", "bodice", "upper_part", "edges.fixes.gather"),
            problem("wider", "bodice", "upper_part", "join", "4 in"),
            trait("cloth.kind", "cloth", "coated"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.pleat"),
        near("cotton", at=2, word="cotton"),
    ),
)
