"""Let a narrow body out at the sides."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let a narrow body out at the sides",
    problem="body_narrow",
    fix="body.fixes.let_out_sides",
    why="What the allowances hold comes back, and nothing is added that could show.",
    source="common-practice",
    when=(),
    fires=(fires("let a narrow body out at the sides", problem("body_narrow", "body", "body_width", "girth", "1 in")),),
    near=(near("another problem", name="body_wide"),),
)
