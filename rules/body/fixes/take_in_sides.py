"""Both side seams taken in, body and sleeve in one."""

from advisor.knowledge import Fix, Trouble, View, Work, amount, work_of
from advisor.operations.bodies import baste_sides_in, finish_sides, take_in_sides
from advisor.operations.marks import parts


def work(trouble: Trouble, view: View) -> Work:
    place, total = trouble.place, amount(trouble, "total")
    takes = parts(total, 2, view.tape, "side")
    ops = (
        baste_sides_in(view, place, total, takes),
        *take_in_sides(view, place, takes),
        finish_sides(view, place, "plain"),
    )
    return work_of(ops, total=total)


fix = Fix(
    title="Take in both side seams",
    why=(
        "Each side seam takes half, a quarter from each layer, from the hem up and out into the sleeve. "
        "Front, back and collar stay as they are."
    ),
    wrong_when=(
        "Only the back stands off: the side seams then swing to the back. Past about two sizes the shoulders "
        "and armholes stay those of the larger size."
    ),
    source="IKAT",
    difficulty=2,
    durability=4,
    visibility=1,
    cautions=(
        "Reach forward and lift both arms before it is sewn: no taking in is settled standing still.",
        "Left and right alike, front and back alike, or the seams swing.",
    ),
    work=work,
)
