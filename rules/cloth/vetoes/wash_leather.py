"""No washing of leather."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No washing of leather",
    fix="cloth.fixes.wash_first",
    why="Leather stiffens and coatings crack in a machine.",
    source="common-practice",
    when=(given("the cloth is leather or coated", Trait(role="cloth", slot="kind", word="coated")),),
    says="The cloth is leather or coated: it is not for the machine. Have it cleaned.",
    fires=(
        fires(
            "no washing of leather",
            offered("unwashed", "cloth", "cloth", "cloth.fixes.wash_first"),
            problem("unwashed", "cloth", "cloth", "open"),
            trait("cloth.kind", "cloth", "coated"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("it is cotton", at=2, word="cotton"),
    ),
)
