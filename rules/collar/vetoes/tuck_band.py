"""No leaf to cover a tuck."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No leaf to cover a tuck",
    fix="collar.fixes.tuck_stand",
    why="On a standing band the tuck is seen from behind by everybody.",
    source="common-practice",
    when=(given("it is a standing band", Trait(place=MATCH.place, role="collar", slot="kind", word="band")),),
    says="{place} is a standing band: nothing would cover the tuck.",
    fires=(
        fires(
            "no leaf to cover a tuck",
            offered("collar_loose", "collar", "collar", "collar.fixes.tuck_stand"),
            problem("collar_loose", "collar", "collar", "closure", "3/8 in"),
            trait("collar.kind", "collar", "band"),
        ),
    ),
    near=(
        near("another fix", fix="collar.fixes.move_button"),
        near("a leaf covers it", at=2, word="stand"),
    ),
)
