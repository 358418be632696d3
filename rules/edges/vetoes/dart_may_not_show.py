"""Darts may not show here."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="Darts may not show",
    fix="edges.fixes.dart_upper",
    why="A dart cuts through a print, and under a yoke or a pocket there is no room for its point.",
    source="common-practice",
    when=(given("darts may not show", Trait(place=MATCH.place, role="upper_part", slot="darts", word="no")),),
    says="A print, a yoke or pockets in {place} are in the way of darts.",
    fires=(
        fires(
            "a yoke",
            offered("wider", "bodice", "upper_part", "edges.fixes.dart_upper"),
            problem("wider", "bodice", "upper_part", "join", "2 in"),
            trait("bodice.darts", "upper_part", "no"),
        ),
    ),
    near=(
        near("another fix", fix="edges.fixes.pleat"),
        near("plain enough", at=2, word="yes"),
        near("it is said of something else", at=2, slot="spare_at"),
    ),
)
