"""Face bare edges."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Face bare edges",
    problem="edge_bare",
    fix="closure.fixes.face_edge",
    role="front_opening",
    why="Where nothing else will be sewn along it, the edge is turned in behind a tape, which holds its length too.",
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
