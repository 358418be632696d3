"""The band of the slit made to fit."""

from advisor.core.figure import Figure
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.cuffs import refit_binding


def work(trouble: Trouble, view: View) -> Work:
    place = trouble.place
    binding, slit = f"{place}.binding", f"{place}.placket"
    over = Figure("over", view.mm(binding) - view.mm(slit), "band less slit", (binding, slit), "case")
    return work_of((refit_binding(view, place, over),))


fix = Fix(
    title="Refit the band of the slit",
    why="The band is opened at its upper half and made as long as the slit, so that the end lies flat.",
    wrong_when="The slit itself is still to be changed.",
    source="common-practice",
    difficulty=2,
    durability=4,
    visibility=1,
    work=work,
)
