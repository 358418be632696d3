"""No flap to make new."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, one_of, problem, trait

rule = Veto(
    title="No flap to make new",
    fix="mending.fixes.renew_flap",
    why="Only a part that is sewn on as a whole can be taken off and made new.",
    source="common-practice",
    when=(
        given(
            "the metal sits in the garment itself",
            Trait(place=MATCH.place, role="hardware", slot="part", word=one_of("edge", "body")),
        ),
    ),
    says="The metal does not sit in a flap or tab: there is no part that could be taken off and made new.",
    fires=(
        fires(
            "no flap to make new",
            offered("holes_open", "snaps", "hardware", "mending.fixes.renew_flap"),
            problem("holes_open", "snaps", "hardware", "mend"),
            trait("snaps.part", "hardware", "edge"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="general.fixes.leave"),
        near("it sits in a flap", at=2, word="flap"),
    ),
)
