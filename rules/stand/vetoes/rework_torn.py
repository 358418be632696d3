"""The cloth is torn."""

from advisor.knowledge import MATCH, Trait, Veto, fires, given, near, offered, problem, trait

rule = Veto(
    title="The cloth is torn",
    fix="stand.fixes.rework_hole",
    why="Buttonhole stitches hold to the cloth beside the slit; where it is torn they hold to nothing. A "
    "repair manual works a damaged hole anew only through a piece of cloth whipped on behind.",
    source="TM201-70",
    when=(given("a hole is torn", Trait(place=MATCH.place, role="button_stand", slot="hole", word="torn")),),
    says="A hole is torn out at its end: stitches alone would not hold there.",
    fires=(
        fires(
            "the cloth is torn",
            offered("buttonhole_worn", "stand", "button_stand", "stand.fixes.rework_hole"),
            problem("buttonhole_worn", "stand", "button_stand", "mend"),
            trait("stand.hole", "button_stand", "torn"),
        ),
    ),
    near=(
        near("another fix", fix="stand.fixes.patch_hole"),
        near("only the stitching is worn", at=2, word="frayed"),
    ),
)
