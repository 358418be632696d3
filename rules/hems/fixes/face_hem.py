"""The hem faced with a strip."""

from advisor.core.work import Spread
from advisor.knowledge import Fix, Trouble, View, Work
from advisor.operations.hem_plans import face


def work(trouble: Trouble, view: View) -> Work:
    sewing = (
        "Sew the free edge of the strip down by hand, catching a thread of the garment.",
        "hand",
        Spread(20, 30, 45),
    )
    return face(trouble, view, sewing)


fix = Fix(
    title="Face the hem with a strip",
    why=(
        "A strip inside takes the place of the turned-up cloth: it needs only 1/4 in of the garment, lies flat on "
        "thick cloth, and is cut to any slant. It is advised once more than about 1 in is let down."
    ),
    wrong_when="A topstitched edge must look as it did, or the end is thin enough for the strip to show through.",
    source="SENECA",
    difficulty=3,
    durability=4,
    visibility=2,
    cautions=(
        "Let down, the old crease may show: white vinegar and steam help, after a trial inside.",
        "Strips differ: trade says 2 to 2 1/2 in wide, others 1 to 1 1/2 in.",
    ),
    work=work,
)
