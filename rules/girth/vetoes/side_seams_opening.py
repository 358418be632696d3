"""Pockets or openings in the side seams rule them out."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Something is set into the side seams",
    fix="girth.fixes.side_seams",
    why="A pocket mouth or an opening set into the side seam would be cut short or drawn round to the back.",
    source="common-practice",
    when=(
        given(
            "a pocket or an opening is set into them",
            Trait(role="lower_part", slot="side_seam", word="opening", place=MATCH.place),
        ),
    ),
    says="A pocket or an opening is set into the side seams: taking {amount} out there would close part of it.",
    fires=(
        fires(
            "pockets in the side seams",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.side_seams"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("trousers.side_seam", "lower_part", "opening"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.back_darts"), near("ordinary seams", at=2, word="plain")),
)
