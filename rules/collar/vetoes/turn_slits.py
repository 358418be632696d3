"""Slits for stays would lie on top."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Slits for stays would lie on top",
    fix="collar.fixes.turn",
    why="The slits for collar stays are cut through the underside only; turned over they lie open to be seen.",
    source="common-practice",
    when=(given("there are slits for stays", Trait(place=MATCH.place, role="collar", slot="stays", word="slits")),),
    says="There are slits for stays on the underside of {place}: turned over they would lie on top.",
    fires=(
        fires(
            "slits for stays would lie on top",
            offered("collar_worn", "collar", "collar", "collar.fixes.turn"),
            problem("collar_worn", "collar", "collar", "mend"),
            trait("collar.stays", "collar", "slits"),
        ),
    ),
    near=(
        near("another fix", fix="collar.fixes.new_leaf"),
        near("no slits", at=2, word="none"),
    ),
)
