"""Metal set through the cloth is rusted or bent."""

from advisor.knowledge import MATCH, Find, Trait, fires, given, near, trait

rule = Find(
    title="Rusted or bent metal",
    problem="metal_rusted",
    stage="open",
    why=(
        "Rust stains and rots the cloth round it and goes on with every damp day and every wash; bent metal cuts "
        "threads and fingers. It cannot stay in."
    ),
    source="common-practice",
    when=(
        given(
            "metal is set in the garment and it is rusted or bent",
            Trait(role="hardware", place=MATCH.place, slot="state", word="rusted"),
        ),
    ),
    says="{place} are rusted or bent: they must come off before the rust spreads further.",
    fires=(fires("rusted snaps", trait("snaps.state", "hardware", "rusted")),),
    near=(
        near("sound metal", word="sound"),
        near("metal that has come off", word="gone"),
        near("not the state but where it sits", slot="part"),
    ),
)
