"""No new metal in torn cloth."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No new metal in torn cloth",
    fix="mending.fixes.replace_metal",
    why=(
        "Metal hangs on a few threads round its post. Where they are rotten it pulls out, and takes the patch with it."
    ),
    source="TM203-419",
    when=(
        given(
            "the cloth round the hole is torn", Trait(place=MATCH.place, role="hardware", slot="around", word="torn")
        ),
    ),
    says="The cloth round the holes is thin or torn: new metal would pull out of it.",
    fires=(
        fires(
            "no new metal in torn cloth",
            offered("metal_rusted", "snaps", "hardware", "mending.fixes.replace_metal"),
            problem("metal_rusted", "snaps", "hardware", "open"),
            trait("snaps.around", "hardware", "torn"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("the cloth round it is sound", at=2, word="sound"),
    ),
)
