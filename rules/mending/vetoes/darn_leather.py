"""No darn in leather."""

from advisor.knowledge import Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No darn in leather",
    fix="mending.fixes.darn",
    why="Every needle hole stays in leather and coated cloth, and a row of them tears like a perforation.",
    source="LEATHER",
    when=(given("the cloth is leather or coated", Trait(role="cloth", slot="kind", word="coated")),),
    says=("In leather and coated cloth every needle hole stays: a hole cannot be woven shut without tearing on."),
    fires=(
        fires(
            "no darn in leather",
            offered("holes_open", "snaps", "hardware", "mending.fixes.darn"),
            problem("holes_open", "snaps", "hardware", "mend"),
            trait("cloth.kind", "cloth", "coated"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("it is cotton", at=2, word="cotton"),
    ),
)
