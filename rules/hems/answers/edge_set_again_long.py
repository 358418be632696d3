"""Set an edge worth keeping on again higher."""

from advisor.knowledge import MATCH, Answer, Trait, fires, given, near, problem, trait

rule = Answer(
    title="Set an edge worth keeping on again higher",
    problem="too_long",
    fix="hems.fixes.edge_set_again",
    why="The worn edge is the one thing that cannot be made again; cut off whole, it goes back on where the leg "
    "should end.",
    source="PRETTYPOPPY",
    when=(
        given(
            "the original edge is worth keeping", Trait(place=MATCH.place, role="leg_end", slot="finish", word="keep")
        ),
    ),
    fires=(
        fires(
            "2 in too long",
            problem("too_long", "leg", "leg_end", "hem", "2 in"),
            trait("leg.finish", "leg_end", "keep"),
        ),
    ),
    near=(
        near("too short", name="too_short"),
        near("a plain hem", at=1, word="hem"),
    ),
)
