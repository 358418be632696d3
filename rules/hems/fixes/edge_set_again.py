"""The original edge cut off and sewn on again higher."""

from advisor.core.figure import Figure, mm_of
from advisor.figures.exact import inches
from advisor.knowledge import Fix, Trouble, View, Work, amount, plain, work_of
from advisor.operations.hem_bands import cut_edge_off, set_edge_on
from advisor.operations.hems import cut_end

SEAM = inches("3/8")
"""Seam that sets the old hem on: common practice, no source."""


def work(trouble: Trouble, view: View) -> Work:
    place, long, seam = trouble.place, amount(trouble, "long"), plain("seam", SEAM, "common-practice")
    spare = mm_of(long) - 2 * SEAM
    if spare <= 0:
        return Work({"long": long, "seam": seam}, ())
    off = Figure("off", spare, "what is too long, less two seam allowances", ("long", "seam"), "common-practice")
    how = "the open ends: the seam that sets the old hem on takes {seam} of each edge."
    ops = (
        cut_edge_off(view, place, seam),
        cut_end(view, place, off, how, {"seam": seam}, after="open"),
        set_edge_on(view, place, seam),
    )
    return work_of(ops, long=long)


fix = Fix(
    title="Cut the original edge off and sew it on again higher",
    why="The worn hem is cut off whole, the leg is shortened above it, and the hem is sewn on again, its seam close "
    "above the old stitching. No fold lies inside, so it stays flat in thick cloth.",
    wrong_when="The leg narrows so much that the old hem is wider or narrower than the leg higher up by more than "
    "about 1/2 in.",
    source="PRETTYPOPPY",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=(
        "What is cut off cannot be let down again.",
        "Sew a sample on the true number of layers where the felled seam crosses.",
    ),
    work=work,
)
