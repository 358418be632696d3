"""Darts at the back, pointed at both ends, in pairs."""

from dataclasses import replace

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.backs import mark_back_darts, plan_back_darts, press_back_darts, sew_back_darts


def work(trouble: Trouble, view: View) -> Work:
    place, total = trouble.place, amount(trouble, "total")
    plan = plan_back_darts(view, place, total)
    if plan is None:
        return Work({"total": total}, (), leaves=trouble.mm)
    ops = (mark_back_darts(view, place, plan), *sew_back_darts(view, place, plan), press_back_darts(view, place))
    known = {figure.id: figure for figure in plan.intakes}
    return replace(work_of(ops, total=total, **known, most_each=plan.limit), leaves=trouble.mm * 0)


fix = Fix(
    title="Sew long darts into the back, in pairs",
    why=(
        "Two darts, or four where two cannot bear it, alike about the center back and pointed at both ends: "
        "they empty the small of the back and leave chest and hip alone."
    ),
    wrong_when=(
        "The chest is loose too, the back carries a yoke pleat that would run into them, or the shirt is worn "
        "loose over the belt."
    ),
    source="IKAT",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("Take out the old yoke pleats below the yoke first, or sew the darts clear of them.",),
    work=work,
)
