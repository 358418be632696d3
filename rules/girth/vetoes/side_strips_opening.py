"""Pockets or openings in the side seams leave no room for strips."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Something is set into the side seams",
    fix="girth.fixes.side_strips",
    why="A strip cannot pass a pocket mouth or an opening without taking it out and setting it anew.",
    source="common-practice",
    when=(
        given(
            "a pocket or an opening is set into them",
            Trait(role="lower_part", slot="side_seam", word="opening", place=MATCH.place),
        ),
    ),
    says="A pocket or an opening is set into the side seams: a strip of {amount} in all cannot pass it.",
    fires=(
        fires(
            "pockets in the side seams",
            offered("too_narrow", "trousers", "lower_part", "girth.fixes.side_strips"),
            problem("too_narrow", "trousers", "lower_part", "girth", "1 in"),
            trait("trousers.side_seam", "lower_part", "opening"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.let_out"), near("ordinary seams", at=2, word="plain")),
)
