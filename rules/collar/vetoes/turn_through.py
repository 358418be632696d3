"""Both sides are worn."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Both sides are worn",
    fix="collar.fixes.turn",
    why="Turned over, the other worn side would lie on top.",
    source="MALECALL",
    when=(given("both sides are worn", Trait(place=MATCH.place, role="collar", slot="worn", word="through")),),
    says="{place} is worn on both sides: turned over it shows the other hole.",
    fires=(
        fires(
            "both sides are worn",
            offered("collar_worn", "collar", "collar", "collar.fixes.turn"),
            problem("collar_worn", "collar", "collar", "mend"),
            trait("collar.worn", "collar", "through"),
        ),
    ),
    near=(
        near("another fix", fix="collar.fixes.new_leaf"),
        near("only the top is worn", at=2, word="fold"),
    ),
)
