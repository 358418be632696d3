"""Gussets in the side seams below the waist."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.bodies import baste_in, cut_gussets, finish_sides, open_sides, set_in
from advisor.operations.marks import parts


def work(trouble: Trouble, view: View) -> Work:
    place, total = trouble.place, amount(trouble, "total")
    ops = (
        open_sides(view, place, below=True),
        cut_gussets(view, place, total),
        baste_in(view, place, "gusset"),
        *set_in(view, place, "gusset", parts(total, 2, view.tape, "side")),
        finish_sides(view, place, "plain"),
    )
    return work_of(ops, total=total)


fix = Fix(
    title="Set gussets into the side seams below the waist",
    why=(
        "A triangle in each side seam gives its width over the hips and nothing above, where none is wanted. "
        "Tucked in it is not seen at all."
    ),
    wrong_when="The chest is tight too: then whole strips give at both.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=("Sew a scrap of cloth behind the point of each: it is where a gusset tears.",),
    work=work,
)
