"""No washing of silk."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No washing of silk",
    fix="cloth.fixes.wash_first",
    why="Water spots silk, takes its finish, crushes a silk velvet for good and can make its colors run.",
    source="common-practice",
    when=(given("the cloth is silk", Trait(role="cloth", slot="kind", word="silk")),),
    says="The cloth is silk, which water spots and, with a pile, crushes for good: have it dry-cleaned.",
    fires=(
        fires(
            "no washing of silk",
            offered("unwashed", "cloth", "cloth", "cloth.fixes.wash_first"),
            problem("unwashed", "cloth", "cloth", "open"),
            trait("cloth.kind", "cloth", "silk"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="cloth.fixes.dry_clean_first"),
        near("it is cotton", at=2, word="cotton"),
    ),
)
