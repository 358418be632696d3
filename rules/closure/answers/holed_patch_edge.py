"""Patch the holes in an edge."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Patch the holes in an edge",
    problem="edge_holed",
    fix="closure.fixes.patch_edge",
    role="front_opening",
    why="Stayed and patched, the edge can be pulled again, and a new fastening may go through it.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "holes in the edge",
            problem("edge_holed", "front", "front_opening", "finish"),
        ),
    ),
    near=(near("raw edges, not holes", name="edge_bare"),),
)
