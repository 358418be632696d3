"""There is no center-back seam that could be let out even in part."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No center-back seam to let out in part",
    fix="girth.fixes.let_out_part",
    why="A back cut in one piece has no seam there, and one that carries a zipper or a vent holds nothing to let out.",
    source="common-practice",
    when=(
        given(
            "there is none, or it carries a zipper or a vent",
            Trait(role="lower_part", slot="center_seam", word="closed", place=MATCH.place),
        ),
    ),
    says="There is no center-back seam, or it carries a zipper or a vent: {amount} cannot come from there.",
    fires=(
        fires(
            "a skirt with its zipper in the back",
            offered("too_narrow", "trousers", "lower_part", "girth.fixes.let_out_part"),
            problem("too_narrow", "trousers", "lower_part", "girth", "1 in"),
            trait("trousers.center_seam", "lower_part", "closed"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.side_strips"), near("a seam that can be opened", at=2, word="plain")),
)
