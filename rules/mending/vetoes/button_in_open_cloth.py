"""No button in the open cloth."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="No button in the open cloth",
    fix="mending.fixes.button_over",
    why="A button and buttonhole need two layers that lap; in the open cloth there is one.",
    source="common-practice",
    when=(
        given(("the metal sat in the open cloth"), Trait(place=MATCH.place, role="hardware", slot="part", word="body")),
    ),
    says="The holes sit in the open cloth, away from an edge: there is nothing for a button to close.",
    fires=(
        fires(
            "no button in the open cloth",
            offered("holes_open", "snaps", "hardware", "mending.fixes.button_over"),
            problem("holes_open", "snaps", "hardware", "mend"),
            trait("snaps.part", "hardware", "body"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("it sat on an edge", at=2, word="edge"),
    ),
)
