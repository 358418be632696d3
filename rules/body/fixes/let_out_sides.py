"""Both side seams let out."""

from advisor.core.figure import mm_of
from advisor.figures.formula import figure
from advisor.figures.letout import holds, left_over
from advisor.knowledge import Fix, Trouble, View, Work, amount, plain, work_of
from advisor.operations.bodies import KEEP, finish_sides, let_out_sides, open_sides
from advisor.operations.marks import parts


def work(trouble: Trouble, view: View) -> Work:
    place, total = trouble.place, amount(trouble, "total")
    allowance, keep = view.measure(f"{place}.allowance"), plain("keep", KEEP, "common-practice")
    held = figure(holds, "held", allowance=allowance, keep=keep, seams=2)
    if mm_of(total) > mm_of(held):
        return Work({"held": held, "total": total}, (), leaves=trouble.mm)
    stays = figure(left_over, "stays", allowance=allowance, total=total, seams=2)
    ops = (
        open_sides(view, place),
        *let_out_sides(view, place, parts(total, 2, view.tape, "side"), stays),
        finish_sides(view, place, "let out"),
    )
    return work_of(ops, held=held, total=total)


fix = Fix(
    title="Let out both side seams",
    why=(
        "Both seams are sewn again nearer their raw edges, from the hem into the sleeve; each gives twice its "
        "allowance less what must stay, 3/8 in on each side, since an armhole pulls at it."
    ),
    wrong_when=(
        "The old stitching shows after steaming, the cloth frays, or the seam was trimmed. What is wanted is "
        "more than the seams hold."
    ),
    source="SCL",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=("Unpick 2 in at the worst place (steam if allowed) and look in daylight: a line still there will stay.",),
    work=work,
)
