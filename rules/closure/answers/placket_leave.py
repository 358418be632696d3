"""Leave a placket without tacks."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Leave a placket without tacks",
    problem="placket_gapes",
    fix="general.fixes.leave",
    role="front_opening",
    why="A heavy cloth may lie over its strip by its weight; a light one shows the buttons at every move.",
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
