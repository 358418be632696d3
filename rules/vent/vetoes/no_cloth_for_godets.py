"""No matching cloth for wedges."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for wedges",
    fix="vent.fixes.godets",
    why="A wedge is seen with every step.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no", place=MATCH.where)),),
    says="There is no matching cloth to hand for two wedges that open {amount} together.",
    fires=(
        fires(
            "no matching cloth for wedges",
            offered("stride_short", "vent", "vent", "vent.fixes.godets"),
            problem("stride_short", "vent", "vent", "finish", "6 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("slits", fix="vent.fixes.slits"),
        near("there is cloth", at=2, word="yes"),
    ),
)
