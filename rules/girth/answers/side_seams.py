"""The side seams answer a waist that is too wide."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take a wide waist in at the side seams",
    problem="too_wide",
    fix="girth.fixes.side_seams",
    why="Where waist and hip are loose together the side seams take it out in two halves; the gap between the back "
    "pockets stays, though each comes nearer its side seam.",
    source="IKAT",
    when=(),
    fires=(fires("2 in too wide", problem("too_wide", "trousers", "lower_part", "girth", "2 in")),),
    near=(near("too narrow instead", name="too_narrow"),),
)
