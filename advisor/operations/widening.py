"""Making an edge above a waist wider: side seams let out, wedges set in, the longer edge below eased on.

The laws: a seam let out by d on each layer gives 2 d; a wedge of width w gives w.
"""

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.trunk import DOMESTIC_ALLOWANCE
from advisor.knowledge.view import View
from advisor.lengths import show
from advisor.operations.edges import FOUR, on_edge
from advisor.operations.shares import shared


def open_sides(view: View, place: str) -> Op:
    """Both side seams above the waist unpicked."""
    return Op(
        id=f"open {place}.sides",
        stage="open",
        verb="unpick",
        places=(place,),
        setup="unpick",
        minutes=Spread(10, 18, 30),
        says=(
            f"Unpick both side seams of {view.words(place)} from the waist up to the armhole or the next seam. "
            "Unpick 2 in first, steam if allowed, and look in daylight: a line that still shows will stay."
        ),
        expects=(Put(f"{place}.sides", "sewn"),),
        effects=(Put(f"{place}.sides", "open"),),
        materials=(Need("seam ripper"),),
    )


def let_out_sides(view: View, place: str, wanting: Figure) -> Op:
    """Both side seams sewn again further out."""
    parts = shared("layer", wanting, FOUR, "at", "each of the four layers", view.tape)
    return on_edge(
        view,
        place,
        id=f"let out {place}.sides",
        verb="let out",
        setup="straight",
        minutes=Spread(15, 25, 40),
        says=(
            f"Sew each side seam again nearer its raw edge: at the waist {parts.words}, running into the old line at "
            "the armhole. Baste and try on first. Sew twice where the allowance is under 3/8 in, and finish the "
            "edges."
        ),
        expects=(Put(f"{place}.sides", "open"),),
        effects=(
            Change(f"{place}.edge", times(wanting, 1, "let_out")),
            Put(f"{place}.fold", "let out"),
            Put(f"{place}.sides", "sewn"),
            Put(f"{place}.press", "due"),
        ),
        figures=parts.figures,
        try_on=True,
    )


def cut_wedges(view: View, place: str, wanting: Figure, cloth: str) -> Op:
    """Two wedges cut for the side seams, of `cloth` as it is told in the list of materials."""
    parts = shared("wedge", wanting, ("the left seam", "the right seam"), "for", "each side seam", view.tape)
    width = Figure(
        "wedge_cut",
        mm_of(parts.largest) + 2 * DOMESTIC_ALLOWANCE,
        "finished width and two allowances",
        (parts.largest.id,),
        "common-practice",
    )
    length = view.measure(f"{place}.side_length")
    tall = Figure(
        "wedge_long",
        mm_of(length) + 2 * DOMESTIC_ALLOWANCE,
        "length of the seam and two allowances",
        (length.id,),
        "common-practice",
    )
    return Op(
        id=f"cut {place}.strips",
        stage="join",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(8, 12, 20),
        says=(
            f"Cut two wedges, finished {parts.words} at the waist and running to nothing at the top: with seam "
            "allowances {wedge_cut} wide at the foot and {wedge_long} long. Threads and nap run as the "
            "garment's do."
        ),
        expects=(Put(f"{place}.strips", "none"),),
        effects=(Put(f"{place}.strips", "cut"),),
        reversible=False,
        check_before="the cloth for the wedges has been washed like the garment",
        figures={**parts.figures, "wedge_cut": width, "wedge_long": tall},
        materials=(Need(cloth, f"2 wedges {show(mm_of(width), view.tape)} by {show(mm_of(tall), view.tape)}"),),
    )


def set_wedges(view: View, place: str, wanting: Figure) -> Op:
    """The wedges sewn into the opened side seams."""
    return on_edge(
        view,
        place,
        id=f"set {place}.strips",
        verb="set",
        setup="straight",
        minutes=Spread(25, 40, 60),
        says=(
            "Baste a wedge into each side seam, its point up, and try on with both arms lifted. Sew each side from "
            "the waist to the point, on the old line, and stop with the needle in the point before you turn."
        ),
        expects=(Put(f"{place}.strips", "cut"), Put(f"{place}.sides", "open")),
        effects=(
            Change(f"{place}.edge", times(wanting, 1, "widened")),
            Put(f"{place}.fold", "widened"),
            Put(f"{place}.strips", "set"),
            Put(f"{place}.sides", "sewn"),
            Put(f"{place}.press", "due"),
        ),
        figures={},
        try_on=True,
    )


def ease_other_in(view: View, place: str, wanting: Figure) -> Op:
    """The longer lower edge eased onto the upper, which is stretched a little to meet it."""
    parts = shared("part", wanting, FOUR, "over", "each of the four quarters", view.tape)
    return on_edge(
        view,
        place,
        id=f"ease onto {place}.edge",
        verb="ease",
        setup="hand",
        minutes=Spread(10, 15, 25),
        says=(
            f"Run an ease row in the lower edge and pin the edges together at the marks, {view.words(place)} on top. "
            f"Stretch it to meet the other: {parts.words}. Sew with the longer side down, where the machine takes it "
            "in."
        ),
        expects=(Put(f"{place}.fold", "flat"),),
        effects=(Change(f"{place}.edge", times(wanting, 1, "stretched")), Put(f"{place}.fold", "stretched")),
        figures=parts.figures,
    )
