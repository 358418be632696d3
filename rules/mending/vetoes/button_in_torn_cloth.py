"""No buttonhole in torn cloth."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No buttonhole in torn cloth",
    fix="mending.fixes.button_over",
    why="A buttonhole is a cut with a pull on it: in torn cloth it runs.",
    source="common-practice",
    when=(
        given(
            "the cloth round the hole is torn", Trait(place=MATCH.place, role="hardware", slot="around", word="torn")
        ),
    ),
    says="The cloth round the holes is thin or torn: a buttonhole cut into it would tear on.",
    fires=(
        fires(
            "no buttonhole in torn cloth",
            offered("holes_open", "snaps", "hardware", "mending.fixes.button_over"),
            problem("holes_open", "snaps", "hardware", "mend"),
            trait("snaps.around", "hardware", "torn"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("the cloth round it is sound", at=2, word="sound"),
    ),
)
