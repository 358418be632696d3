"""The back of trousers over the seat: shortened below the band, or lengthened with a wedge.

The law: a wedge at the top of the back, nothing at the side seams, takes or gives its depth down the center back only.
"""

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.knowledge.view import View
from advisor.operations.girth import waist_open
from advisor.operations.marks import seam_allowance


def mark_back(view: View, seat: str, up: Figure) -> Op:
    """Mark the new top edge of the back."""
    return Op(
        id=f"mark {seat}.line",
        stage="open",
        verb="mark",
        places=(seat,),
        setup="body",
        minutes=Spread(6, 10, 15),
        says=(
            "With the fold pinned, sit down and bend once more. Then mark the back {up} below the seam of the band at "
            "center back, in a flat curve that meets the old edge at the side seams."
        ),
        expects=(Put(f"{seat}.line", "none"),),
        effects=(Put(f"{seat}.line", "marked"),),
        try_on=True,
        figures={"up": up},
    )


def cut_back(view: View, seat: str, lower: str, up: Figure) -> Op:
    """Cut the wedge off the top of the back."""
    return Op(
        id=f"cut {seat}.line",
        stage="level",
        verb="cut",
        places=(seat, lower),
        setup="table",
        minutes=Spread(6, 10, 15),
        says=(
            "Cut the back {seam_allowance} above the marked curve: {up} falls away at center back, nothing at the "
            "sides. Ease the curved edge to the band as before; pockets come nearer the band by nearly as much."
        ),
        expects=(Put(f"{seat}.line", "marked"), *waist_open(view)),
        effects=(Change(f"{seat}.rise", times(up, -1, "cut off")), Put(f"{seat}.line", "cut")),
        reversible=False,
        check_before="she has sat and bent with the fold pinned, and the waist was not drawn down at the back",
        figures={"up": up, "seam_allowance": seam_allowance(view.tape)},
    )


def cut_wedge(view: View, seat: str, deep: Figure, cloth: str) -> Op:
    """Cut a wedge for the top of the back."""
    allowance = seam_allowance(view.tape)
    return Op(
        id=f"cut {seat}.wedge",
        stage="level",
        verb="cut",
        places=(seat,),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            "Draw the top of the back on paper from side seam to side seam, and a wedge on it that is {deep} deep at "
            "center back and nothing at the sides. Cut it {wedge_cut} deep at center back, {seam_allowance} all "
            "round, in two halves if the back has a seam."
        ),
        expects=(Put(f"{seat}.wedge", "none"),),
        effects=(Put(f"{seat}.wedge", "cut"),),
        figures={
            "deep": deep,
            "wedge_cut": figure(inset_cut, "wedge_cut", wanting=deep, insets=1, allowance=allowance),
            "seam_allowance": allowance,
        },
        materials=(Need(cloth, "a wedge as wide as the back"),),
    )


def set_wedge(view: View, seat: str, lower: str, deep: Figure) -> Op:
    """Sew the wedge to the top of the back."""
    return Op(
        id=f"set {seat}.wedge",
        stage="level",
        verb="set",
        places=(seat, lower),
        setup="straight",
        minutes=Spread(15, 25, 40),
        says=(
            f"Sew the wedge to the top of the back of {view.words(lower)}, running into the edge at the side seams, "
            "and press the seam up. At center back it shows {deep}. Its upper edge goes into the band."
        ),
        expects=(Put(f"{seat}.wedge", "cut"), *waist_open(view)),
        effects=(Change(f"{seat}.rise", deep), Put(f"{seat}.wedge", "set")),
        figures={"deep": deep},
        materials=(Need("thread to match"),),
    )
