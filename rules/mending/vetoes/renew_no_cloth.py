"""No cloth for a new flap."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No cloth for a new flap",
    fix="mending.fixes.renew_flap",
    why="A flap is seen from across the room: in another cloth it is a patch the size of a hand.",
    source="common-practice",
    when=(given("there is no matching cloth", Trait(role="cloth", slot="spare", word="no")),),
    says="There is no matching cloth to hand for a new flap.",
    fires=(
        fires(
            "no cloth for a new flap",
            offered("holes_open", "snaps", "hardware", "mending.fixes.renew_flap"),
            problem("holes_open", "snaps", "hardware", "mend"),
            trait("cloth.spare", "cloth", "no"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("there is matching cloth", at=2, word="yes"),
    ),
)
