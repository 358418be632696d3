"""Cut shorter and hemmed 1/2 in deep."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, plain, work_of
from advisor.operations.tails import UNDER, WIDE, holds, shorten, wide_allowance


def work(trouble: Trouble, view: View) -> Work:
    place, long, allowance = trouble.place, amount(trouble, "long"), wide_allowance()
    if not holds(long, view.measure(f"{place}.turn_up"), allowance):
        return Work({"long": long, "allowance": allowance}, ())
    turns = {"under": plain("under", UNDER, "OSU-L87"), "depth": plain("depth", WIDE, "ASG-HEM")}
    return work_of(shorten(view, place, long, allowance, "Turn {under} under, then {depth} up.", turns))


fix = Fix(
    title="Shorten it with a hem 1/2 in deep",
    why=(
        "Turned under by 1/4 in and up by 1/2 in it hangs well outside a belt: a guild gives 3/8 to 5/8 in "
        "for a shirt, 3/8 to 3/4 in for a blouse worn outside."
    ),
    wrong_when="The edge is curved: so deep a hem stands in folds on the curve.",
    source="ASG-HEM",
    difficulty=2,
    durability=4,
    visibility=2,
    cautions=(
        "What is cut off cannot be let down again.",
        "See where the lowest button comes: 2 in above the new edge at the least, or take it and its hole out first.",
    ),
    work=work,
)
