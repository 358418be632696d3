"""Where metal sat there is a bare hole."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, one_of, trait

rule = Find(
    title="A bare hole where metal sat",
    problem="holes_open",
    stage="mend",
    why=(
        "A hole punched for metal has cut threads all round. Left bare it runs, so it cannot "
        "stay, and a half-made mend holds nothing."
    ),
    source="common-practice",
    when=(
        given(
            "the hole of a piece of metal is bare, or its mend is not finished",
            Trait(
                role="hardware",
                place=MATCH.place,
                slot="holes",
                word=one_of("open", "backed", "marked", "worked", "cut"),
            ),
        ),
    ),
    says="Where {place} sat there are holes, and no hole may be left bare.",
    fires=(
        fires("the metal is off", trait("snaps.holes", "hardware", "open")),
        fires("a patch is behind it and nothing more", trait("snaps.holes", "hardware", "backed")),
        fires("a buttonhole is cut and has no button", trait("snaps.holes", "hardware", "cut")),
    ),
    near=(
        near("the metal never came off", word="none"),
        near("it is patched", word="patched"),
        near("buttonholes of a front opening", role="front_opening"),
    ),
)
