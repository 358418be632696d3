"""Sew a hook and a bar on the band."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import back_torn, backed, mend


def work(trouble: Trouble, view: View) -> Work:
    band = trouble.place
    says = (
        "Set the hook under the outer end, its bend just inside the edge, and sew every hole of it with "
        "doubled thread through the inner layers only. Hook the bar into it, close the band as it is "
        "worn, mark the holes of the bar opposite, and sew it on."
    )
    needs = (
        Need("large flat hook and bar"),
        Need("strong thread"),
    )
    key = f"{band}.fastening"
    sewn = mend(view, key, "set", "hook", "hand", (12, 18, 30), says, "closure", *needs, given=backed(view, band))
    return work_of((*back_torn(view, band), sewn))


fix = Fix(
    title="Sew a hook and a bar on the band",
    why="A flat hook under the outer end and a bar opposite lie flat under a belt and do not show.",
    wrong_when="The band strains: a hook opens under a pull that a button bears.",
    source="HOOKBAR",
    difficulty=2,
    durability=4,
    visibility=1,
    cautions=(),
    work=work,
)
