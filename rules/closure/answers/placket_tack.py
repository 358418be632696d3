"""Tack a gaping placket."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Tack a gaping placket",
    problem="placket_gapes",
    fix="closure.fixes.tack_placket",
    role="front_opening",
    why="The tacks are all that is missing, and the finished front can still be tacked.",
    source="common-practice",
    when=(),
    fires=(
        fires(
            "a placket without tacks",
            problem("placket_gapes", "front", "front_opening", "finish"),
        ),
    ),
    near=(near("raw edges, not a placket", name="edge_bare"),),
)
