"""No matching cloth for a collar."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for a collar",
    fix="collar.fixes.new_leaf",
    why="A collar is looked at first of all: one that nearly matches looks like a mistake.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(place=MATCH.cloth, role="cloth", slot="spare", word="no")),),
    says="There is no matching cloth to hand for a new collar.",
    fires=(
        fires(
            "no matching cloth for a collar",
            offered("collar_worn", "collar", "collar", "collar.fixes.new_leaf"),
            problem("collar_worn", "collar", "collar", "mend"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", fix="collar.fixes.contrast_leaf"),
        near("there is cloth", at=2, word="yes"),
    ),
)
