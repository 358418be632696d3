"""Leather and coated cloth are not pleated into a seam."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="This cloth is not pleated into a seam",
    fix="edges.fixes.pleat",
    why="Folds are pinned, basted and pressed: here every hole stays, no iron helps, and three layers are thick.",
    source="common-practice",
    when=(given("the cloth is leather or coated", Trait(role="cloth", slot="kind", word="coated")),),
    says="In leather and coated cloth the pins and basting that hold pleats leave holes, and no iron lays them.",
    fires=(
        fires(
            "a leather bodice",
            offered("wider", "bodice", "upper_part", "edges.fixes.pleat"),
            problem("wider", "bodice", "upper_part", "join", "4 in"),
            trait("cloth.kind", "cloth", "coated"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.take_in_upper_sides"),
        near("cotton", at=2, word="cotton"),
    ),
)
