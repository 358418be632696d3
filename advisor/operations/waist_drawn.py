"""A waist drawn in without opening it (elastic in a back casing, side tabs), and the lower part cut anew.

The law: what draws in over the waist seam draws in both edges sewn there, and the band over them, alike.
"""

from fractions import Fraction

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Key, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures import elastic, seams
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.knowledge.view import View
from advisor.operations.bands import has_band
from advisor.operations.girth import BAND, SEAM, SIDES, waist_open

UPPER = "upper_part"


def edges_at_waist(view: View, lower: str) -> tuple[Key, ...]:
    """The rounds that are drawn in together at the waist."""
    keys = [f"{lower}.edge"]
    if view.has(SEAM) and view.has(UPPER):
        keys.append(f"{view.one(UPPER)}.edge")
    if has_band(view):
        keys.append(f"{view.one(BAND)}.edge")
    return tuple(keys)


def drawn_in(view: View, lower: str, by: Figure, id: str) -> tuple[Change, ...]:
    """The changes when the closed waist is drawn in."""
    return tuple(Change(key, times(by, -1, id)) for key in edges_at_waist(view, lower))


def sew_back_casing(view: View, lower: str) -> Op:
    """A casing on the inside of the back waist, from side seam to side seam."""
    return Op(
        id=f"sew {lower}.fold",
        stage="girth",
        verb="sew",
        places=(lower,),
        setup="straight",
        minutes=Spread(15, 25, 35),
        says=(
            "On the inside stitch a strip of soft tape, 1 1/4 in wide, over the waist from one side seam across the "
            "back to the other, along both its edges. Leave the ends open."
        ),
        expects=(Put(f"{lower}.fold", "flat"),),
        effects=(Put(f"{lower}.fold", "cased"),),
        needs=_after_waist(view),
        materials=(Need("soft tape, 1 1/4 in wide", "as wide as the back"), Need("thread to match")),
    )


def thread_back_elastic(view: View, lower: str, total: Figure) -> Op:
    """Elastic in the back casing: the waist is drawn in by `total`."""
    back = figure(seams.each_side, "back", total=view.measure(f"{lower}.edge"))
    finished = figure(elastic.back_finished, "back_finished", back=back, loss=total)
    length = figure(elastic.cut, "elastic", finished=finished, share=Fraction(9, 10), join=inches("1"))
    return Op(
        id=f"thread {lower}.fold",
        stage="girth",
        verb="thread",
        places=(lower,),
        setup="body",
        minutes=Spread(10, 15, 20),
        says=(
            "Cut {elastic} of elastic, 1 in wide, and thread it. Stitch one end fast at a side seam; draw the other "
            "until the back measures {back_finished} between the side seams at rest, try on, and stitch it fast."
        ),
        expects=(Put(f"{lower}.fold", "cased"),),
        effects=(*drawn_in(view, lower, total, "drawn in"), Put(f"{lower}.fold", "elastic")),
        try_on=True,
        figures={"total": total, "back_finished": finished, "elastic": length},
        materials=(Need("elastic, 1 in wide", "as wide as the back"),),
    )


def make_tabs(view: View, lower: str) -> Op:
    """Two tabs with a buttonhole or a buckle."""
    return Op(
        id=f"make {lower}.fold",
        stage="girth",
        verb="make",
        places=(lower,),
        setup="straight",
        minutes=Spread(25, 40, 60),
        says=(
            "Make two tabs of doubled cloth, 1 1/4 in wide and about 5 in long, one end pointed, with a buttonhole or "
            "two worked in them, or buy two straps with buckles."
        ),
        expects=(Put(f"{lower}.fold", "flat"),),
        effects=(Put(f"{lower}.fold", "tabbed"),),
        materials=(Need("cloth for two tabs, or two straps with buckles"), Need("two buttons")),
    )


def set_tabs(view: View, lower: str, draws: tuple[Figure, ...]) -> tuple[Op, ...]:
    """Set each tab at a side seam: it draws the waist in by its part."""
    return tuple(
        Op(
            id=f"set {lower}.{side}_tab",
            stage="girth",
            verb="set",
            places=(lower,),
            setup="straight",
            minutes=Spread(12, 18, 25),
            says=(
                f"Sew the blunt end of the {side} tab over the waist behind the side seam, through all layers, in a "
                "square with a cross. Fasten the point so far forward that a fold that takes {draw} lies under it, and "
                "sew the button there."
            ),
            expects=(Put(f"{lower}.fold", "tabbed"),),
            effects=(*drawn_in(view, lower, draw, f"drawn in {side}"),),
            needs=_after_waist(view),
            try_on=True,
            figures={"draw": draw},
            materials=(Need("thread to match"),),
        )
        for side, draw in zip(SIDES, draws, strict=True)
    )


def take_apart(view: View, lower: str) -> Op:
    """Unpick the lower part into its panels."""
    return Op(
        id=f"take apart {lower}.sides",
        stage="girth",
        verb="unpick",
        places=(lower,),
        setup="unpick",
        minutes=Spread(60, 90, 150),
        says=(
            f"Take {view.words(lower)} apart: pockets off, then waist, center, side and inner seams. Number the "
            "panels, mark right side and grain, and press them flat without pulling."
        ),
        expects=(*_seams(lower, "sewn"), *waist_open(view)),
        effects=_seams(lower, "open"),
        materials=(Need("seam ripper"), Need("marking chalk")),
    )


def recut(view: View, lower: str, total: Figure) -> Op:
    """Cut the panels down to a pattern that fits."""
    return Op(
        id=f"cut {lower}.edge",
        stage="girth",
        verb="cut",
        places=(lower,),
        setup="table",
        minutes=Spread(60, 90, 120),
        says=(
            "Lay a pattern in the right size on the panels, grain on grain, and cut them down: at the waist {total} "
            "goes altogether, at hip and crotch what the pattern says. Mark the new places of the pockets."
        ),
        expects=_seams(lower, "open"),
        effects=(Change(f"{lower}.edge", times(total, -1, "cut away")),),
        reversible=False,
        check_before="the pattern was sewn up in old cloth and fitted, and lies within every panel with its allowances",
        figures={"total": total},
        materials=(Need("a pattern in the right size"), Need("old cloth for a trial")),
    )


def sew_panels(view: View, lower: str) -> Op:
    """Sew the panels together again."""
    return Op(
        id=f"put together {lower}.sides",
        stage="girth",
        verb="put together",
        places=(lower,),
        setup="straight",
        minutes=Spread(120, 180, 300),
        says=(
            "Set the pockets, sew the crotch curve, inner and side seams, and press each before the next crosses it. "
            "Try on before the waist goes back."
        ),
        expects=(*_seams(lower, "open"), *waist_open(view)),
        effects=(*_seams(lower, "sewn"), Put(f"{lower}.press", "due")),
        try_on=True,
        materials=(Need("thread to match"),),
    )


def _seams(lower: str, word: str) -> tuple[Put, ...]:
    return Put(f"{lower}.center_back", word), Put(f"{lower}.sides", word)


def _after_waist(view: View) -> tuple[str, ...]:
    if view.has(SEAM):
        return (f"press {view.one(SEAM)}.press",)
    return (f"press {view.one(BAND)}.press",) if has_band(view) else ()
