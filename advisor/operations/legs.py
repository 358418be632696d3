"""The width of trouser legs: the long seams opened, moved at one height or more, sewn again.

The law: a seam moved by d on each of its two layers changes the round there by 2 d. Both legs are done alike.
"""

from dataclasses import replace

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.figures.seams import each_side, shortest_run_out
from advisor.knowledge.view import View
from advisor.lengths import show
from advisor.operations.marks import parts, seam_allowance
from advisor.operations.seams import open_seam, sew_seam

WHICH = {"inseams": "inner", "outseams": "outer"}
FELLED = {"inseams": "inseam", "outseams": "outseam"}


def is_felled(view: View, legs: str, which: str) -> bool:
    """Whether these seams are felled."""
    return view.word(f"{legs}.{FELLED[which]}") == "felled"


def open_leg_seams(view: View, legs: str, which: str) -> Op:
    """Unpick both inner or both outer leg seams where they are to move."""
    minutes = Spread(30, 50, 80) if is_felled(view, legs, which) else Spread(12, 18, 30)
    words = (
        f"both {WHICH[which]} leg seams as far as the new line runs, and the hems for 2 in either side of them where "
        "it runs so far"
    )
    if which == "inseams":
        words += "; where it runs up to the crotch, the crotch seam too for 2 in either side of them"
    return open_seam(f"{legs}.{which}", words, minutes)


def sew_leg_seams(view: View, legs: str, which: str) -> Op:
    """Sew them again on the new line."""
    felled = is_felled(view, legs, which)
    minutes = Spread(40, 60, 90) if felled else Spread(15, 25, 40)
    words = f"both {WHICH[which]} leg seams on the new line"
    sewn = sew_seam(f"{legs}.{which}", words, minutes, "girth")
    last = (
        " Trim one allowance to 1/4 in and the other to 1/2 in, fold the wide one over the narrow and fell it with "
        "two rows of topstitching, as it was. Press."
        if felled
        else " Finish and press them. Trim only after a day of wear and a wash."
    )
    crossing = (
        " Where the new line runs up to the crotch, sew the crotch seam across it again last, twice."
        if which == "inseams"
        else ""
    )
    notions = (Need("topstitching thread to match"), Need("stout needle")) if felled else ()
    return replace(
        sewn,
        materials=(*sewn.materials, *notions),
        reversible=not felled,
        check_before="they were worn basted and sat in: an allowance trimmed for felling is gone" if felled else "",
        says=(
            f"Baste {words}, front on back without drawing either, from the hem up. Try on, sit, climb a stair; see "
            f"that the creases hang straight. Then sew them, and take the basting out.{last}{crossing} "
            "Fold the hems up again, the seams in them slanted as a mirror of the leg above."
        ),
    )


def move_seam(view: View, place: str, legs: str, which: str, by: Figure, sign: int) -> Op:
    """Draw the new line of one kind of leg seam at one height: each leg loses (-1) or gains (1) `by`."""
    verb, way, does = ("take in", "inside", "goes from") if sign < 0 else ("let out", "outside", "comes to")
    layer = figure(each_side, "layer", total=by)
    return Op(
        id=f"{verb} {place}.{which}",
        stage="girth",
        verb=verb,
        places=(place,),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            f"On both legs draw the new {WHICH[which]} line at {view.words(place)} {{layer}} {way} the old one on "
            f"each layer: {{by}} {does} each leg. Run it into the old line over {{run_out}} or more, or to the next "
            "mark, in a line without a bend."
        ),
        expects=(Put(f"{legs}.{which}", "open"),),
        effects=(Change(f"{place}.round", times(by, sign, f"{verb} {which}")),),
        figures={"by": by, "layer": layer, "run_out": figure(shortest_run_out, "run_out", each_side=layer)},
        materials=(Need("marking chalk"),),
    )


def along(view: View, place: str, which: tuple[str, ...], total: Figure, sign: int) -> tuple[Op, ...]:
    """All operations of moving these leg seams at one height, the amount shared between inner and outer."""
    legs = view.one("legs")
    shares = parts(total, len(which), view.tape, "seam") if len(which) > 1 else (total,)
    ops: list[Op] = []
    for seam, share in zip(which, shares, strict=True):
        ops += [
            open_leg_seams(view, legs, seam),
            move_seam(view, place, legs, seam, share, sign),
            sew_leg_seams(view, legs, seam),
        ]
    return tuple(ops)


def strips_down_legs(view: View, place: str, total: Figure, cloth: str) -> tuple[Op, ...]:
    """A strip of `cloth` down both outer leg seams."""
    legs, seam = view.one("legs"), "outseams"
    allowance = seam_allowance(view.tape)
    wide = figure(inset_cut, "strip_cut", wanting=total, insets=1, allowance=allowance)
    cut = Op(
        id=f"cut {legs}.strips",
        stage="girth",
        verb="cut",
        places=(legs,),
        setup="table",
        minutes=Spread(12, 20, 30),
        says=(
            "Cut two strips as long as the leg seam where it binds, with a hand's breadth above and below, "
            f"{{strip_cut}} wide at {view.words(place)} with {{seam_allowance}} for each seam, running out to seam "
            "allowances alone; or as long as the whole leg, for a stripe."
        ),
        expects=(Put(f"{legs}.strips", "none"),),
        effects=(Put(f"{legs}.strips", "cut"),),
        figures={"strip_cut": wide, "seam_allowance": allowance},
        materials=(Need(cloth, f"two strips {show(mm_of(wide), view.tape)} wide"),),
    )
    lay = Op(
        id=f"set {place}.strips",
        stage="girth",
        verb="set",
        places=(place,),
        setup="straight",
        minutes=Spread(30, 45, 70),
        says=(
            "Baste a strip into each opened outer seam and try on, seated too. Sew both its seams: at "
            f"{view.words(place)} it must lie {{total}} wide between them."
        ),
        expects=(Put(f"{legs}.{seam}", "open"), Put(f"{legs}.strips", "cut")),
        effects=(Change(f"{place}.round", times(total, 1, "let in")),),
        try_on=True,
        figures={"total": total},
        materials=(Need("thread to match"), Need("basting thread")),
    )
    return (open_leg_seams(view, legs, seam), cut, lay, sew_leg_seams(view, legs, seam))
