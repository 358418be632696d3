"""Darts at the back answer a waist that is too wide."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Take a wide waist in with darts",
    problem="too_wide",
    fix="girth.fixes.back_darts",
    why="Where only the waist is loose and the seat is not, darts take the cloth out at the waist and give it back "
    "below.",
    source="IKAT",
    when=(),
    fires=(fires("2 in too wide", problem("too_wide", "trousers", "lower_part", "girth", "2 in")),),
    near=(near("too narrow instead", name="too_narrow"),),
)
