"""Gather the upper edge onto the lower."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.edges import at_waist, draw_up, run_rows


def work(trouble: Trouble, view: View) -> Work:
    excess = amount(trouble, "excess")
    return work_of(at_waist(view, trouble.place, run_rows(view, trouble.place), draw_up(view, trouble.place, excess)))


fix = Fix(
    title="Gather the upper edge",
    why=(
        "Two rows of long stitches draw the upper edge up until it is as long as the lower. Fullness is spread over "
        "a stretch of each quarter, clear of seams and of the opening; how full it looks is counted in that stretch "
        "and not over the whole quarter."
    ),
    wrong_when=(
        "The cloth is stiff or heavy, or the garment should lie flat under a belt. Sources: 1.5 times as full is "
        "usual for heavy cloth, 2 for medium, 3 for light; one page asks for more in heavy cloth and contradicts "
        "its own table."
    ),
    source="PUNTADAS",
    difficulty=3,
    durability=4,
    visibility=4,
    cautions=("Gathers show, and make the waist look fuller; try them on a scrap of the same cloth.",),
    work=work,
)
