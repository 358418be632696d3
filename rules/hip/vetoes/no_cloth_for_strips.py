"""No matching cloth for strips over the hip."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for strips over the hip",
    fix="hip.fixes.side_strips",
    why="Strips down both sides are seen; in another cloth they are a new design and not a repair.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no", place=MATCH.other)),),
    says="There is no matching cloth to hand for two strips that give {amount} together.",
    fires=(
        fires(
            "no matching cloth for strips over the hip",
            offered("hip_narrow", "hip", "hip", "hip.fixes.side_strips"),
            problem("hip_narrow", "hip", "hip", "level", "1 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", fix="hip.fixes.let_out_sides"),
        near("there is cloth", at=2, word="yes"),
    ),
)
