"""Raise the waist seam as far as the trunk loop can spare, and name what is left."""

from dataclasses import replace

from advisor.core.figure import mm_of
from advisor.figures.formula import figure
from advisor.figures.trunk import most_raise
from advisor.knowledge import Fix, Trouble, View, Work, work_of
from advisor.operations.levels import cut_new_waist, mark_new_waist
from advisor.operations.marks import down_to_mark
from advisor.operations.waist import open_waist, press_waist, sew_waist


def work(trouble: Trouble, view: View) -> Work:
    seam, trunk = view.one("waist_seam"), view.one("trunk")
    most = figure(
        most_raise,
        "most_raise",
        garment_loop=view.measure(f"{trunk}.loop"),
        body_loop=view.measure(f"{trunk}.body"),
        ease=view.measure(f"{trunk}.ease"),
    )
    raised = down_to_mark(most, view.tape, "raise")
    ops = (
        mark_new_waist(view, seam),
        open_waist(view),
        cut_new_waist(view, seam, trouble.place, raised),
        sew_waist(view),
        press_waist(view),
    )
    return replace(work_of(ops, most_raise=most), leaves=trouble.mm - mm_of(raised))


fix = Fix(
    title="Raise the waist seam as far as the trunk can spare",
    why="A raise takes twice its amount out of the loop from shoulder through the crotch and back. The raise stops "
    "where the room to move begins; what is still too long above the seam stays.",
    wrong_when="The seam must sit exactly at the waist, under a fitted belt or a jacket: then a gusset or a casing "
    "serves better than half a raise.",
    source="common-practice",
    difficulty=4,
    durability=5,
    visibility=2,
    cautions=(
        "A waist once cut higher cannot be let down again without an inset band.",
        "No room is left to raise it further: what the loop has to spare is used up.",
    ),
    work=work,
)
