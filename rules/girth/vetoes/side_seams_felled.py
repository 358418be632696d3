"""Felled side seams are no place to take in."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Felled side seams",
    fix="girth.fixes.side_seams",
    why="Felled and topstitched sides, with their rivets and pocket mouths, are the real reason jeans are taken in at "
    "center back: each seam would have to be felled again along the whole hip.",
    source="common-practice",
    when=(
        given(
            "the side seams are felled or topstitched",
            Trait(role="lower_part", slot="side_seam", word="felled", place=MATCH.place),
        ),
    ),
    says="The side seams are felled or topstitched flat: to take in {amount} both would have to be opened and felled "
    "again down to the hip. The center back or darts are less work.",
    fires=(
        fires(
            "felled sides",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.side_seams"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("trousers.side_seam", "lower_part", "felled"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.back_darts"), near("ordinary seams", at=2, word="plain")),
)
