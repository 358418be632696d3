"""Sew a flat button on the band."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import back_torn, backed, mend


def work(trouble: Trouble, view: View) -> Work:
    band = trouble.place
    says = (
        "Close the band and mark the button through its hole, at the end that takes the pull. Sew it on "
        "with doubled thread through all layers, over a matchstick, wind the shank twice, and end "
        "inside. Where there was only a hook, work a buttonhole in the outer end first."
    )
    needs = (
        Need("flat button to fit the hole"),
        Need("strong thread"),
    )
    key = f"{band}.fastening"
    sewn = mend(view, key, "set", "button", "hand", (6, 10, 15), says, "closure", *needs, given=backed(view, band))
    return work_of((*back_torn(view, band), sewn))


fix = Fix(
    title="Sew a flat button on the band",
    why="A flat button on a shank, sewn through both layers with doubled thread, holds as long as the band.",
    wrong_when="The old fastening was a hook and the outer layer has no buttonhole: then a hook, or a buttonhole too.",
    source="common-practice",
    difficulty=1,
    durability=4,
    visibility=2,
    cautions=(),
    work=work,
)
