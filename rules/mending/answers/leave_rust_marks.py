"""Leave rust marks."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave rust marks",
    problem="rust_marks",
    fix="general.fixes.leave",
    why=(
        "A mark that nobody sees from the hall may stay; but every pressing sets it harder, and it can no longer be "
        "taken out later."
    ),
    source="RUST-AB",
    when=(),
    fires=(fires("leave rust marks", problem("rust_marks", "snaps", "hardware", "mend")),),
    near=(near("another problem", name="holes_open"),),
)
