"""Oxalic acid on rust marks."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Oxalic acid on rust marks",
    problem="rust_marks",
    fix="mending.fixes.rust_oxalic",
    why="Old rust that lemon leaves may come out with weak oxalic acid, if the cloth stands the trial.",
    source="RUST-HK",
    when=(),
    fires=(fires("oxalic acid on rust marks", problem("rust_marks", "snaps", "hardware", "mend")),),
    near=(near("another problem", name="holes_open"),),
)
