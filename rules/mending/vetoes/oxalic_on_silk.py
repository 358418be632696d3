"""No oxalic acid on silk or leather."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, one_of, problem, trait

rule = Veto(
    title="No oxalic acid on silk or leather",
    fix="mending.fixes.rust_oxalic",
    why="Acid weakens silk and spots leather and coatings, and neither shows before it is too late.",
    source="common-practice",
    when=(
        given(
            ("the cloth is silk, leather or coated"), Trait(role="cloth", slot="kind", word=one_of("silk", "coated"))
        ),
    ),
    says="Oxalic acid is not for silk, leather or coated cloth.",
    fires=(
        fires(
            "no oxalic acid on silk or leather",
            offered("rust_marks", "snaps", "hardware", "mending.fixes.rust_oxalic"),
            problem("rust_marks", "snaps", "hardware", "mend"),
            trait("cloth.kind", "cloth", "silk"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="mending.fixes.cover_marks"),
        near("it is cotton", at=2, word="cotton"),
    ),
)
