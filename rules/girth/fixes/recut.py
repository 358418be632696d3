"""Take the lower part apart and cut it down to a smaller size."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.girth import press_seams, with_waist_open
from advisor.operations.waist_drawn import recut, sew_panels, take_apart


def work(trouble: Trouble, view: View) -> Work:
    lower, total = trouble.place, amount(trouble, "total")
    ops = (
        take_apart(view, lower),
        recut(view, lower, total),
        sew_panels(view, lower),
        press_seams(view, lower),
    )
    return work_of(with_waist_open(view, ops))


fix = Fix(
    title="Take it apart and cut it to a smaller size",
    why="The panels come apart and are cut down from a pattern that fits at waist, hip and crotch, pockets set anew.",
    wrong_when="The garment is worth less than a day's work: it is then better passed on to someone it fits.",
    source="common-practice",
    difficulty=5,
    durability=5,
    visibility=2,
    cautions=("Sew the pattern up in old cloth first; what is cut off does not come back.",),
    work=work,
)
