"""Narrow a wide leg at felled inner seams."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Narrow a wide leg at felled inner seams",
    problem="leg_wide",
    fix="leg.fixes.inseams_felled",
    why="Felled inner seams are opened along the whole leg and felled again: much work, but nothing shows, and the "
    "outer seam stays.",
    source="FITTED",
    when=(given("the inner seams are felled", Trait(role="legs", slot="inseam", word="felled", place=MATCH.legs)),),
    fires=(
        fires(
            "2 in too wide",
            problem("leg_wide", "knee", "leg_girth", "girth", "2 in"),
            trait("legs.inseam", "legs", "felled"),
        ),
    ),
    near=(
        near("too narrow instead", name="leg_narrow"),
        near("ordinary ones", at=1, word="plain"),
    ),
)
