"""Let narrow shoulders out."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Let narrow shoulders out",
    problem="shoulder_narrow",
    fix="shoulder.fixes.let_out",
    why="What the armhole seam holds at the shoulder comes out to the bone.",
    source="WSU-EM2246",
    when=(),
    fires=(fires("let narrow shoulders out", problem("shoulder_narrow", "shoulder", "shoulder", "girth", "1/8 in")),),
    near=(near("another problem", name="shoulder_wide"),),
)
