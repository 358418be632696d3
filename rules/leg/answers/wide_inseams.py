"""Narrow a wide leg at the inner seams."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Narrow a wide leg at the inner seams",
    problem="leg_wide",
    fix="leg.fixes.inseams",
    why="The inner seam takes it out of sight, and whatever marks the outer seam, a selvage or a stripe, stays.",
    source="FITTED",
    when=(given("the inner seams are not felled", Trait(role="legs", slot="inseam", word="plain", place=MATCH.legs)),),
    fires=(
        fires(
            "2 in too wide",
            problem("leg_wide", "knee", "leg_girth", "girth", "2 in"),
            trait("legs.inseam", "legs", "plain"),
        ),
    ),
    near=(
        near("too narrow instead", name="leg_narrow"),
        near("felled ones", at=1, word="felled"),
    ),
)
