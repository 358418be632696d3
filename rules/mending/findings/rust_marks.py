"""Metal has left rust in the cloth."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, trait

rule = Find(
    title="Rust marks in the cloth",
    problem="rust_marks",
    stage="mend",
    why=(
        "Rust is fixed by heat and by chlorine bleach: what is not taken out before the iron comes near stays in. A "
        "treatment that was not rinsed out goes on eating the cloth."
    ),
    source="RUST-AB",
    when=(
        given(
            "there are rust marks, or a treatment that was not rinsed out",
            Trait(role="hardware", place=MATCH.place, slot="marks", word=one_of("rust", "soaked")),
        ),
    ),
    says=(
        "{place} have left rust marks in the cloth. Neither iron nor dryer may touch them until they are dealt with."
    ),
    fires=(
        fires("brown rings round the snaps", trait("snaps.marks", "hardware", "rust")),
        fires("treated and not rinsed", trait("snaps.marks", "hardware", "soaked")),
    ),
    near=(
        near("no marks", word="none"),
        near("treated and rinsed", word="treated"),
        near("another thing known of the metal", slot="state"),
    ),
)
