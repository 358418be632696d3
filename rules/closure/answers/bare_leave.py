"""Leave bare edges."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave bare edges",
    problem="edge_bare",
    fix="general.fixes.leave",
    role="front_opening",
    why="A firm, closely woven cloth frays slowly, and inside a closed front nobody sees it.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "raw edges",
            problem("edge_bare", "front", "front_opening", "finish"),
        ),
    ),
    near=(near("holes, not raw edges", name="edge_holed"),),
)
