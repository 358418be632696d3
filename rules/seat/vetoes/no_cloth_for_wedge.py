"""No matching cloth for a wedge in the back."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No matching cloth for a wedge in the back",
    fix="seat.fixes.back_wedge",
    why="A wedge at the top of the back shows whenever she bends.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no", place=MATCH.other)),),
    says="There is no matching cloth to hand for a wedge {amount} deep.",
    fires=(
        fires(
            "no matching cloth for a wedge in the back",
            offered("seat_short", "seat", "seat", "seat.fixes.back_wedge"),
            problem("seat_short", "seat", "seat", "level", "1 in"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", fix="seat.fixes.back_wedge_of_other_cloth"),
        near("there is cloth", at=2, word="yes"),
    ),
)
