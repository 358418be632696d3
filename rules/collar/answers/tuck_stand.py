"""Tuck a loose collar at the back."""

from advisor.knowledge import Answer, fires, near, problem

rule = Answer(
    title="Tuck a loose collar at the back",
    problem="collar_loose",
    fix="collar.fixes.tuck_stand",
    why="The front stays as it is, and what is too much goes into the back.",
    source="NEWDRESS-26",
    when=(),
    fires=(fires("tuck a loose collar at the back", problem("collar_loose", "collar", "collar", "closure", "3/8 in")),),
    near=(near("another problem", name="collar_tight"),),
)
