"""Cut shorter and hemmed with two turns of 1/4 in."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, plain, work_of
from advisor.operations.tails import NARROW, holds, narrow_allowance, shorten


def work(trouble: Trouble, view: View) -> Work:
    place, long, allowance = trouble.place, amount(trouble, "long"), narrow_allowance()
    if not holds(long, view.measure(f"{place}.turn_up"), allowance):
        return Work({"long": long, "allowance": allowance}, ())
    fold = plain("fold", NARROW, "OSU-L87")
    return work_of(shorten(view, place, long, allowance, "Turn up {fold}, then {fold} again.", {"fold": fold}))


fix = Fix(
    title="Shorten it with a narrow hem",
    why=(
        "Cut in its own curve and turned twice by 1/4 in: so narrow a hem goes round the curves of a tail, "
        "and under a belt it does not show. A guild gives 1/4 to 1/2 in for a blouse that is tucked in, 3/8 "
        "to 5/8 in for a shirt."
    ),
    wrong_when="It hangs outside and should fall straight: a narrow hem does not weigh it down.",
    source="OSU-L87",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=(
        "What is cut off cannot be let down again.",
        "See where the lowest button comes: 2 in above the new edge at the least, or take it and its hole out first.",
    ),
    work=work,
)
