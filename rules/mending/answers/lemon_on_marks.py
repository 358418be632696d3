"""Lemon on rust marks."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Lemon on rust marks",
    problem="rust_marks",
    fix="mending.fixes.rust_lemon",
    why=("Lemon is the gentlest acid that dissolves rust: it comes before anything stronger, and before any heat."),
    source="RUST-AB",
    when=(),
    fires=(fires("lemon on rust marks", problem("rust_marks", "snaps", "hardware", "mend")),),
    near=(near("another problem", name="holes_open"),),
)
