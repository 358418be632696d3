"""Take the waist in with darts at the back, in pairs about the center."""

from dataclasses import replace

from advisor.core.figure import mm_of
from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.darts import mark_darts, plan_darts, press_darts, sew_darts
from advisor.operations.girth import with_waist_open


def work(trouble: Trouble, view: View) -> Work:
    lower, total = trouble.place, amount(trouble, "total")
    plan = plan_darts(view, lower, total)
    if plan is None:
        return Work({"total": total}, (), leaves=trouble.mm)
    ops = (mark_darts(view, lower, plan), *sew_darts(view, lower, plan), press_darts(view, lower, total))
    known = {figure.id: figure for figure in plan.intakes}
    sized = work_of(with_waist_open(view, ops), total=total, **known, most_each=plan.limit)
    left = trouble.mm - sum(mm_of(intake) for intake in plan.intakes)
    return replace(sized, leaves=left if left > view.tape.mark / 2 else left * 0)


fix = Fix(
    title="Sew darts into the back, in pairs",
    why="The amount goes into two darts, or four where two cannot bear it, set alike about the center back and pressed "
    "toward it. They empty the waist and leave the seat; two small darts lie better than one large one.",
    wrong_when="The seat is loose too: a dart empties the waist only, and what is left below it stands out like a "
    "balloon. A yoke is a dart already and too short for another.",
    source="NIMI-200",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=("Do not slash a dart before it has been worn and washed.",),
    work=work,
)
