"""Draw the waist in with a tab at each side."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.marks import parts
from advisor.operations.waist_drawn import make_tabs, set_tabs


def work(trouble: Trouble, view: View) -> Work:
    lower, total = trouble.place, amount(trouble, "total")
    draws = parts(total, 2, view.tape, "side")
    return work_of((make_tabs(view, lower), *set_tabs(view, lower, draws)), total=total)


fix = Fix(
    title="Draw the waist in with side tabs",
    why="A tab at each side buttons the waist in by half of the amount. It can be moved as the body changes, and taken "
    "off again without a trace but needle holes.",
    wrong_when="The folds under the tabs would be thick, in heavy cloth or over pockets.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=4,
    cautions=(),
    work=work,
)
