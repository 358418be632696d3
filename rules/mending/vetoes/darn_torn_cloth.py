"""No darn in torn cloth."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No darn in torn cloth",
    fix="mending.fixes.darn",
    why="A darn hangs on the threads round the hole; rotten threads let it go.",
    source="common-practice",
    when=(
        given(
            "the cloth round the hole is torn", Trait(place=MATCH.place, role="hardware", slot="around", word="torn")
        ),
    ),
    says="The cloth round the holes is thin or torn: a darn would pull out of it.",
    fires=(
        fires(
            "no darn in torn cloth",
            offered("holes_open", "snaps", "hardware", "mending.fixes.darn"),
            problem("holes_open", "snaps", "hardware", "mend"),
            trait("snaps.around", "hardware", "torn"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("the cloth round it is sound", at=2, word="sound"),
    ),
)
