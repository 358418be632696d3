"""Darts over a loose seat make a balloon."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="The seat is loose too",
    fix="girth.fixes.back_darts",
    why="A dart empties the waist only. Where the seat is loose as well, what is left below the darts stands out like "
    "a balloon under a tight waist; seams take it out all the way.",
    source="IKAT",
    when=(
        given(
            "it is loose all the way to the hip",
            Trait(role="lower_part", slot="loose_to", word="hip", place=MATCH.place),
        ),
    ),
    says="It is loose all the way to the hip: darts would take {amount} out at the waist and leave the seat standing "
    "out below it like a balloon.",
    fires=(
        fires(
            "loose to the hip",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.back_darts"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("trousers.loose_to", "lower_part", "hip"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.side_seams"), near("loose to the high hip", at=2, word="high_hip")),
)
