"""Recutting fits the hip with the same work."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, near_without, offered, one_of, problem, trait

rule = Veto(
    title="Recutting would do both",
    fix="girth.fixes.recut",
    why="Taken apart and cut to a smaller size, it fits at hip and waist with one work. Seams moved for the hip "
    "before that are sewn only to be unpicked.",
    source="common-practice",
    when=(
        given(
            "a seam was moved for the hip",
            Trait(role="hip", slot="worked", word=one_of("sides", "center back"), place=MATCH.other),
        ),
    ),
    says="The hip has been taken in hand already. Cut to a smaller size it would be fitted with the same work: leave "
    "{other} as it is and choose that alone.",
    fires=(
        fires(
            "sides moved for the hip",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.recut"),
            problem("too_wide", "trousers", "lower_part", "girth", "5 in"),
            trait("hip.worked", "hip", "sides"),
        ),
    ),
    near=(
        near("darts", fix="girth.fixes.back_darts"),
        near("nothing done at the hip", at=2, word="none"),
        near_without("no hip to speak of", at=2),
    ),
)
