"""Fuse the hem with a strip of web."""

from advisor.core.work import Need
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.small_mends import mend


def work(trouble: Trouble, view: View) -> Work:
    says = (
        "Press the old fold in again. Slide a strip of fusible web under the edge, none of it bare, and "
        "fuse it with a press cloth at the heat of its label: press, lift, press, never slide. Let it "
        "cool flat."
    )
    needs = (Need("fusible web, a strip"),)
    return work_of(
        (mend(view, f"{trouble.place}.edge", "sewn again", "fuse", "iron", (6, 10, 15), says, "finish", *needs),)
    )


fix = Fix(
    title="Fuse the hem with a strip of web",
    why="A strip of fusible web under the turned edge holds it up in ten minutes without a needle.",
    wrong_when="It is washed hot or often, or the web puckers or shines through.",
    source="HSW-HEM",
    difficulty=1,
    durability=2,
    visibility=1,
    cautions=("Try it on a seam allowance first; if that puckers, not this way.",),
    work=work,
)
