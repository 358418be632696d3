"""Lemon juice failed the trial."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Lemon juice failed the trial",
    fix=("mending.fixes.rust_lemon", "mending.fixes.rust_oxalic"),
    why="What changes the hidden seam changes the front of the garment.",
    source="RUST-HK",
    when=(
        given(
            "the trial on a hidden seam failed",
            Trait(place=MATCH.place, role="hardware", slot="rust_test", word="failed"),
        ),
    ),
    says="The trial on a hidden seam changed color or cloth.",
    fires=(
        fires(
            "lemon juice failed the trial",
            offered("rust_marks", "snaps", "hardware", "mending.fixes.rust_lemon"),
            problem("rust_marks", "snaps", "hardware", "mend"),
            trait("snaps.rust_test", "hardware", "failed"),
        ),
        fires(
            "oxalic acid failed the trial",
            offered("rust_marks", "snaps", "hardware", "mending.fixes.rust_oxalic"),
            problem("rust_marks", "snaps", "hardware", "mend"),
            trait("snaps.rust_test", "hardware", "failed"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="mending.fixes.cover_marks"),
        near("the trial was passed", at=2, word="passed"),
    ),
)
