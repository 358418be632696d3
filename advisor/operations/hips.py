"""Taking in and letting out over the full hip, before the waist is fitted.

The laws: what seams take at the hip comes off the round there; at the waist they take no more than it has to spare,
or give no more than it lacks. A center-back seam moved over the seat moves the back pockets with it, a side seam does
not. What the waist still has to spare after that is loose above the hip only.
"""

from fractions import Fraction
from math import ceil

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Mm, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures import fitting, seams
from advisor.figures.estimate import lined
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.knowledge.view import View, plain
from advisor.operations.girth import (
    LEGS,
    POCKETS,
    SIDES,
    open_center_back,
    open_sides,
    waist_open,
    with_waist_open,
)
from advisor.operations.marks import parts, seam_allowance
from advisor.operations.waist_hung import WAISTS

RUNS_ON = inches("1")
"""So much more at the waist than at the hip runs out between them without a dent: common practice, no source."""

LINED = (Fraction(3, 2), Fraction(7, 4), Fraction(2))
"""What a lining that moves along makes of the least, likely and most minutes: common practice, no source."""


def at_waist(view: View, lower: str, total: Figure, sign: int) -> Figure:
    """What the waist takes (sign -1) or gains (1) along with `total` at the hip: what it has to spare, or lacks."""
    waist = next(view.one(role) for role in WAISTS if view.has(role))
    over = -sign * (view.mm(f"{lower}.edge") - view.mm(f"{waist}.wanted"))
    share = max(over, Mm(0)) if over <= mm_of(total) + (RUNS_ON if sign < 0 else 0) else mm_of(total)
    told = "what the waist can join in with"
    return Figure("at_waist", share, told, (f"{lower}.edge", f"{waist}.wanted", total.id), "common-practice")


def along_sides(view: View, hip: str, lower: str, total: Figure, sign: int) -> tuple[Op, ...]:
    """Both side seams moved in (-1) or out (1), each by half, and the waist with them as far as it asks for it."""
    waist = at_waist(view, lower, total, sign)
    at_hip = parts(total, 2, view.tape, "hip")
    at_top = parts(waist, 2, view.tape, "top")
    ops = (
        open_sides(view, lower),
        _baste_sides(view, hip, lower, at_hip, at_top, "inside" if sign < 0 else "outside"),
        *(_side(view, hip, lower, side, sign, at_hip[n], at_top[n], mm_of(waist) != 0) for n, side in enumerate(SIDES)),
        _finish_sides(view, hip, lower),
    )
    return _opened(view, waist, ops)


def along_center_back(view: View, hip: str, lower: str, total: Figure, sign: int) -> tuple[Op, ...]:
    """The center-back seam moved in (-1) or out (1) over the seat, and the waist with it as far as it asks for it."""
    waist = at_waist(view, lower, total, sign)
    ops = (
        open_center_back(view, lower),
        _baste_center_back(view, hip, lower, total, waist, "inside" if sign < 0 else "outside"),
        _center_back(view, hip, lower, total, waist, sign),
    )
    return _opened(view, waist, ops)


def strips_along_sides(view: View, hip: str, lower: str, total: Figure, cloth: str) -> tuple[Op, ...]:
    """A strip of `cloth` down each side seam, half of the amount wide at the hip."""
    waist = at_waist(view, lower, total, 1)
    at_hip = parts(total, 2, view.tape, "hip")
    at_top = parts(waist, 2, view.tape, "top")
    ops = (
        open_sides(view, lower),
        _cut_strips(view, lower, total, waist, cloth),
        _baste_strips(view, hip, lower),
        *(_strip(view, hip, lower, side, at_hip[n], at_top[n], mm_of(waist) != 0) for n, side in enumerate(SIDES)),
        _finish_sides(view, hip, lower),
    )
    return _opened(view, waist, ops)


def _opened(view: View, waist: Figure, ops: tuple[Op, ...]) -> tuple[Op, ...]:
    """The waist is opened only if it is to change."""
    return with_waist_open(view, ops) if mm_of(waist) else ops


def _expects(view: View, waist: bool) -> tuple[Put, ...]:
    return waist_open(view) if waist else ()


def _lined(view: View) -> str:
    """A lining that hangs inside follows the seams."""
    if not view.has("lining") or view.word(f"{view.one('lining')}.there") != "there":
        return ""
    return " The lining follows at its own seams by as much, and keeps the pleat it has at the back."


def _longer(view: View, alone: Spread) -> Spread:
    """Minutes of work a lining moves with: 1 1/2 to 2 times those without one."""
    if not _lined(view):
        return alone
    guesses = zip((alone.least, alone.likely, alone.most), LINED, strict=True)
    return Spread(*(ceil(lined(Fraction(minutes), factor)) for minutes, factor in guesses))


def _layer(id: str, seam: Figure) -> Figure:
    return figure(seams.each_side, id, total=seam)


def _baste_sides(
    view: View, hip: str, lower: str, at_hip: tuple[Figure, ...], at_top: tuple[Figure, ...], way: str
) -> Op:
    waist = any(mm_of(part) for part in at_top)
    known = {f"{side}": at_hip[n] for n, side in enumerate(SIDES)}
    known |= {f"layer_{side}": _layer(f"layer_{side}", at_hip[n]) for n, side in enumerate(SIDES)}
    known["run_out"] = figure(seams.shortest_run_out, "run_out", each_side=known["layer_left"])
    known["hip_depth"] = plain("hip_depth", fitting.HIP_DEPTH, "HTS")
    if waist:
        known |= {f"top_{side}": _layer(f"top_{side}", at_top[n]) for n, side in enumerate(SIDES)}
        top = f"at the waist they lie {{top_left}} {way} on each layer of the left, {{top_right}} of the right"
    else:
        top = "above the hip run it into the old line just below the waist, which stays as it is"
    return Op(
        id=f"baste {lower}.sides",
        stage="level",
        verb="baste",
        places=(hip, lower),
        setup="body",
        minutes=_longer(view, Spread(25, 35, 50)),
        says=(
            f"At {view.words(hip)}, {{hip_depth}} down or where the body is fullest, draw the new line of the left "
            f"side seam {{layer_left}} {way} the old one on each layer, {{left}} in all, of the right one "
            f"{{layer_right}} on each, {{right}} in all; {top}. Below the hip run it out over {{run_out}} or more. "
            f"Baste both, try on, sit, bend and climb a stair.{_lined(view)}"
        ),
        expects=(Put(f"{lower}.sides", "open"), *_expects(view, waist)),
        effects=(Put(f"{lower}.sides", "basted"),),
        try_on=True,
        figures=known,
        materials=(Need("basting thread"), Need("marking chalk")),
    )


def _side(view: View, hip: str, lower: str, side: str, sign: int, at_hip: Figure, top: Figure, waist: bool) -> Op:
    verb = "take in" if sign < 0 else "let out"
    does = "it takes" if sign < 0 else "it gives"
    change = "taken in" if sign < 0 else "let out"
    return Op(
        id=f"{verb} {hip}.{side}_side",
        stage="level",
        verb=verb,
        places=(hip, lower),
        setup="straight",
        minutes=_longer(view, Spread(15, 22, 30)),
        says=f"Sew the {side} side seam on the basted line, from below up: {does} {{at_hip}} at {view.words(hip)}.",
        expects=(Put(f"{lower}.sides", "basted"), *_expects(view, waist)),
        effects=(
            Change(f"{hip}.round", times(at_hip, sign, f"{change} {side}")),
            *((Change(f"{lower}.edge", times(top, sign, f"{change} {side} at the waist")),) if waist else ()),
            *_after(hip, lower, "sides", sign),
        ),
        figures={"at_hip": at_hip},
        materials=(Need("thread to match"),),
    )


def _finish_sides(view: View, hip: str, lower: str) -> Op:
    return Op(
        id=f"finish {hip}.sides",
        stage="level",
        verb="finish",
        places=(hip, lower),
        setup="iron",
        minutes=Spread(10, 15, 20),
        says=(
            "Take the basting out, finish the edges of both side seams and press them as they were, over a rounded "
            "cushion at the hip. Trim only after a day of wear and a wash."
        ),
        expects=(Put(f"{lower}.sides", "basted"),),
        effects=(Put(f"{lower}.sides", "sewn"),),
    )


def _after(hip: str, lower: str, worked: str, sign: int) -> tuple[Put, ...]:
    """Which seam was moved; where it was taken in, what is still loose is loose above the hip only."""
    loose = (Put(f"{lower}.loose_to", "high_hip"),) if sign < 0 else ()
    return (Put(f"{hip}.worked", worked), *loose)


def _baste_center_back(view: View, hip: str, lower: str, total: Figure, waist: Figure, way: str) -> Op:
    below = (
        "Keep it so down to where the seam turns into the crotch, and run it out in the curve."
        if view.has(LEGS)
        else "Below the seat run it out in a long flat line, or keep it to the edge where all of it is too wide."
    )
    known = {"total": total, "layer": _layer("layer", total)}
    known["hip_depth"] = plain("hip_depth", fitting.HIP_DEPTH, "HTS")
    if mm_of(waist):
        known |= {"at_waist": waist, "top": _layer("top", waist)}
        top = f"at the waist it lies {{top}} {way} on each, {{at_waist}} in all"
    else:
        top = "at the waist it meets the old one, and the waist stays as it is"
    return Op(
        id=f"baste {lower}.center_back",
        stage="level",
        verb="baste",
        places=(hip, lower),
        setup="body",
        minutes=_longer(view, Spread(20, 25, 40)),
        says=(
            f"Over the full seat, {{hip_depth}} down, draw the new center-back line {{layer}} {way} the old one on "
            f"each layer, {{total}} in all; {top}. {below} Baste, try on, sit, bend and climb a stair.{_lined(view)}"
        ),
        expects=(Put(f"{lower}.center_back", "open"), *_expects(view, mm_of(waist) != 0)),
        effects=(Put(f"{lower}.center_back", "basted"),),
        try_on=True,
        figures=known,
        materials=(Need("basting thread"), Need("marking chalk")),
    )


def _center_back(view: View, hip: str, lower: str, total: Figure, waist: Figure, sign: int) -> Op:
    verb, after, change = ("take in", "taken in", "taken in") if sign < 0 else ("let out", "sewn", "let out")
    felled = view.word(f"{lower}.center_seam") == "felled"
    finish = (
        "Fell it flat as it was, with two rows of topstitching from band to crotch"
        if felled
        else "Finish the edges and press them open over a rounded cushion; trim only after a day of wear and a wash"
    )
    top = (Change(f"{lower}.edge", times(waist, sign, f"{change} at the waist")),) if mm_of(waist) else ()
    return Op(
        id=f"{verb} {hip}.center_back",
        stage="level",
        verb=verb,
        places=(hip, lower),
        setup="straight",
        minutes=_longer(view, Spread(30, 45, 70) if felled else Spread(15, 22, 35)),
        says=(
            f"Sew the basted line from the crotch up, twice over the seat, with short stitches in the curve. {finish}."
        ),
        expects=(Put(f"{lower}.center_back", "basted"), *_expects(view, mm_of(waist) != 0)),
        effects=(
            Change(f"{hip}.round", times(total, sign, change)),
            *top,
            *_pockets(view, total, sign),
            Put(f"{lower}.center_back", after),
            *_after(hip, lower, "center back", sign),
        ),
        figures={"total": total},
        materials=(Need("thread to match"),),
    )


def _pockets(view: View, total: Figure, sign: int) -> tuple[Change, ...]:
    """Over the seat the seam moves the pockets by all it takes, half from each side."""
    if not view.has(POCKETS):
        return ()
    pockets, half = view.one(POCKETS), figure(seams.each_side, "half_of_it", total=total)
    return (
        Change(f"{pockets}.gap", times(total, sign, "gap between pockets")),
        Change(f"{pockets}.to_seam", times(half, 2 * sign, "both pockets to the seam")),
    )


def _cut_strips(view: View, lower: str, total: Figure, waist: Figure, cloth: str) -> Op:
    allowance = seam_allowance(view.tape)

    def cut(id: str, all: Figure) -> Figure:
        return figure(inset_cut, id, wanting=all, insets=2, allowance=allowance)

    return Op(
        id=f"cut {lower}.strips",
        stage="level",
        verb="cut",
        places=(lower,),
        setup="table",
        minutes=Spread(10, 20, 30),
        says=(
            "Cut two strips {strip_hip} wide at the hip and {strip_top} wide at the top, {seam_allowance} of that for "
            "each seam. Below the hip run them out to seam allowances alone, or keep their width to the hem for a "
            "stripe."
        ),
        expects=(Put(f"{lower}.strips", "none"),),
        effects=(Put(f"{lower}.strips", "cut"),),
        figures={
            "strip_hip": cut("strip_hip", total),
            "strip_top": cut("strip_top", waist),
            "seam_allowance": allowance,
        },
        materials=(Need(cloth, "two strips, as long as the side seams"),),
    )


def _baste_strips(view: View, hip: str, lower: str) -> Op:
    return Op(
        id=f"baste {lower}.strips",
        stage="level",
        verb="baste",
        places=(hip, lower),
        setup="body",
        minutes=Spread(25, 40, 60),
        says="Baste a strip into each opened side seam. Try on, sit, bend and climb a stair.",
        expects=(Put(f"{lower}.sides", "open"), Put(f"{lower}.strips", "cut")),
        effects=(Put(f"{lower}.sides", "basted"),),
        try_on=True,
        materials=(Need("basting thread"),),
    )


def _strip(view: View, hip: str, lower: str, side: str, at_hip: Figure, top: Figure, waist: bool) -> Op:
    return Op(
        id=f"set {hip}.{side}_strip",
        stage="level",
        verb="set",
        places=(hip, lower),
        setup="straight",
        minutes=Spread(25, 35, 55),
        says=f"Sew the {side} strip in along both its seams: at {view.words(hip)} it must lie {{at_hip}} wide.",
        expects=(Put(f"{lower}.sides", "basted"), *_expects(view, waist)),
        effects=(
            Change(f"{hip}.round", times(at_hip, 1, f"let in {side}")),
            *((Change(f"{lower}.edge", times(top, 1, f"let in {side} at the waist")),) if waist else ()),
            *_after(hip, lower, "sides", 1),
        ),
        figures={"at_hip": at_hip},
        materials=(Need("thread to match"),),
    )
