"""There is no center-back seam that could be taken in."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No center-back seam to take in",
    fix="girth.fixes.center_back",
    why="A back cut in one piece has no seam there, and one that carries a zipper or a vent cannot give half to each "
    "side.",
    source="common-practice",
    when=(
        given(
            "there is none, or it carries a zipper or a vent",
            Trait(role="lower_part", slot="center_seam", word="closed", place=MATCH.place),
        ),
    ),
    says="There is no center-back seam in {place}, or it carries a zipper or a vent: nothing can be taken in there.",
    fires=(
        fires(
            "a back in one piece",
            offered("too_wide", "trousers", "lower_part", "girth.fixes.center_back"),
            problem("too_wide", "trousers", "lower_part", "girth", "2 in"),
            trait("trousers.center_seam", "lower_part", "closed"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.back_darts"), near("an ordinary seam", at=2, word="plain")),
)
