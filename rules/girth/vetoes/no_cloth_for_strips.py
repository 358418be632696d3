"""No matching cloth for strips in the side seams."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for the strips",
    fix="girth.fixes.side_strips",
    why="Strips down both sides are seen; in another cloth they are a new design and not a repair.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no", place=MATCH.cloth)),),
    says="There is no matching cloth to hand for two strips that give {amount} together. In a contrast cloth they are "
    "a design you would have to want.",
    fires=(
        fires(
            "nothing to hand",
            offered("too_narrow", "trousers", "lower_part", "girth.fixes.side_strips"),
            problem("too_narrow", "trousers", "lower_part", "girth", "1 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(near("another fix", fix="girth.fixes.let_out"), near("there is cloth", at=2, word="yes")),
)
