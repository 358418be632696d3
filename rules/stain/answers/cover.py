"""Cover a stain."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Cover a stain",
    problem="stained",
    fix="stain.fixes.cover",
    why="Nothing is put on the cloth that could harm it.",
    source="common-practice",
    when=(),
    fires=(fires("cover a stain", problem("stained", "stain", "stain", "open")),),
    near=(near("another problem", name="button_missing"),),
)
