"""No lemon juice beside metal."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, one_of, problem, trait

rule = Veto(
    title="No lemon juice beside metal",
    fix=("mending.fixes.rust_lemon", "mending.fixes.rust_oxalic"),
    why="Acid draws new rust out of metal it can reach: the metal comes off first.",
    source="common-practice",
    when=(
        given(
            "the metal has not come off",
            Trait(place=MATCH.place, role=("hardware"), slot="state", word=one_of("sound", "rusted", "unwanted")),
        ),
    ),
    says="The metal is still in the cloth: acid would bring new rust out of it. Take it off first.",
    fires=(
        fires(
            "no lemon juice beside metal",
            offered("rust_marks", "snaps", "hardware", "mending.fixes.rust_lemon"),
            problem("rust_marks", "snaps", "hardware", "mend"),
            trait("snaps.state", "hardware", "sound"),
        ),
        fires(
            "no oxalic acid beside metal",
            offered("rust_marks", "snaps", "hardware", "mending.fixes.rust_oxalic"),
            problem("rust_marks", "snaps", "hardware", "mend"),
            trait("snaps.state", "hardware", "sound"),
        ),
    ),
    near=(
        near("another fix", at=0, fix="mending.fixes.cover_marks"),
        near("it has come off", at=2, word="gone"),
    ),
)
