"""Both sides are worn."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Both sides are worn",
    fix="cuff.fixes.turn",
    why="Turned over, the other worn side would be outside.",
    source="CASTLE",
    when=(given("both sides are worn", Trait(place=MATCH.place, role="cuff", slot="worn", word="through")),),
    says="{place} are worn through inside and out: turned over they show the other side of the same hole.",
    fires=(
        fires(
            "both sides are worn",
            offered("cuff_worn", "cuff", "cuff", "cuff.fixes.turn"),
            problem("cuff_worn", "cuff", "cuff", "mend"),
            trait("cuff.worn", "cuff", "through"),
        ),
    ),
    near=(
        near("another fix", fix="cuff.fixes.bind"),
        near("only the outside is worn", at=2, word="edge"),
    ),
)
