"""No cloth for a hemmed patch."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No cloth for a hemmed patch",
    fix="mending.fixes.hemmed_patch",
    why=("The point of a hemmed patch is that it is lost in the cloth; in another cloth it only costs more time."),
    source="SEWTEACH",
    when=(given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no")),),
    says="There is no matching cloth to hand for a patch that is meant not to show.",
    fires=(
        fires(
            "no cloth for a hemmed patch",
            offered("holes_open", "snaps", "hardware", "mending.fixes.hemmed_patch"),
            problem("holes_open", "snaps", "hardware", "mend"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("there is matching cloth", at=2, word="yes"),
    ),
)
