"""Share a wide waist over the center back and both side seams."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.girth import with_waist_open
from advisor.operations.three_seams import take_in_three


def work(trouble: Trouble, view: View) -> Work:
    ops, known = take_in_three(view, trouble.place, amount(trouble, "total"))
    return work_of(with_waist_open(view, ops), **known)


fix = Fix(
    title="Share it over the center back and both sides",
    why="The center back takes what the back pockets bear, never more than half; the rest comes off both sides alike. "
    "No seam moves far, so pockets, side lines and hip keep their places better than when one seam takes all.",
    wrong_when="One seam bears it alone: three opened seams are twice the work, and twice as many to match at the "
    "waist.",
    source="common-practice",
    difficulty=3,
    durability=4,
    visibility=3,
    cautions=(
        "Trim nothing until it has been worn for a day and washed.",
        "Take left and right in alike unless the body differs, and front and back alike, or the seams swing.",
    ),
    work=work,
)
