"""Taking in and letting out a part that goes round chest and back at its side seams; strips and gussets in them.

The laws: a side seam moved by d on each layer takes or gives 2 d; a strip or gusset of width w gives w. What is taken
out at the back alone is in backs.py.
"""

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures import seams
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.knowledge.view import View
from advisor.lengths import show
from advisor.operations.marks import seam_allowance

SIDES = ("left", "right")
KEEP = inches("3/8")
"""What stays of a side seam that runs into an armhole: common practice, no source."""
TRY = "Button it, reach forward, and lift both arms; if it strains, give back 1/2 in of the amount before you sew."


def at_waist(view: View, place: str) -> bool:
    """Whether only the waist is taken in, so that hem and sleeve are not touched."""
    return view.word(f"{place}.fits") == "wide" and view.word(f"{place}.loose_at") == "waist"


def open_sides(view: View, place: str, below: bool = False) -> Op:
    """Unpick both side seams from the hem up: into the sleeve, or (`below`) only as far as they are to be widened."""
    felled = view.word(f"{place}.side_seam") == "felled"
    upward = (
        f"the side seams of {view.words(place)} up to 1 in above where it begins to strain"
        if below
        else f"both side seams of {view.words(place)} up through the armhole and 4 in into the sleeve"
    )
    return Op(
        id=f"open {place}.sides below the waist" if below else f"open {place}.sides",
        stage="open",
        verb="unpick",
        places=(place,),
        setup="unpick",
        minutes=Spread(35, 50, 80) if felled else Spread(12, 20, 35),
        says=(
            f"Unpick the hem 2 in to each side of the side seams, then {upward}. Unpick 2 in first, steam if allowed, "
            "and look in daylight: a line that still shows will stay."
        ),
        expects=(Put(f"{place}.sides", "sewn"),),
        effects=(Put(f"{place}.sides", "open"),),
        materials=(Need("seam ripper"),),
    )


def baste_sides_in(view: View, place: str, total: Figure, takes: tuple[Figure, ...]) -> Op:
    """Baste new lines inside the old seams, which stay until the new ones are sewn."""
    layers = {
        f"layer_{side}": figure(seams.each_side, f"layer_{side}", total=take)
        for side, take in zip(SIDES, takes, strict=True)
    }
    first, ends = (
        "Unpick the hem 2 in to each side of the side seams. ",
        ("Keep that down to the hem, and run out to nothing 5 in or more into the sleeve, past the armhole seam"),
    )
    if at_waist(view, place):
        first, ends = (
            "",
            "That is at the waist; from there run out to nothing under the arm and over the hip, without a bend",
        )
    return Op(
        id=f"baste {place}.sides",
        stage="girth",
        verb="baste",
        places=(place,),
        setup="body",
        minutes=Spread(15, 25, 40),
        says=(
            f"{first}Draw the new line {{layer_left}} inside the left seam "
            f"on each layer, {{layer_right}} inside the right one: {{total}} altogether. {ends}. Baste, try on. {TRY}"
        ),
        expects=(Put(f"{place}.sides", "sewn"),),
        effects=(Put(f"{place}.sides", "basted"),),
        try_on=True,
        figures={"total": total, **layers},
        materials=(Need("basting thread"), Need("marking chalk")),
    )


def take_in_sides(view: View, place: str, takes: tuple[Figure, ...]) -> tuple[Op, ...]:
    """Sew each basted side seam: the round loses its part of the total."""
    how, twice = "on the basted line", ""
    if not at_waist(view, place):
        how = "and the sleeve in one, on the basted line, from the hem up"
        twice = " Sew twice over 2 in where it crosses the armhole."
    return tuple(
        Op(
            id=f"take in {place}.{side}_side",
            stage="girth",
            verb="take in",
            places=(place,),
            setup="straight",
            minutes=Spread(10, 15, 22),
            says=f"Sew the {side} side seam {how}: it takes {{take}} altogether.{twice}",
            expects=(Put(f"{place}.sides", "basted"),),
            effects=(Change(f"{place}.round", times(take, -1, f"taken in {side}")), Put(f"{place}.press", "due")),
            figures={"take": take},
            materials=(Need("thread to match"),),
        )
        for side, take in zip(SIDES, takes, strict=True)
        if mm_of(take)
    )


FINISH = {
    "plain": (
        "Trim to 1/2 in only after a day of wear and a wash, overcast the edges, and press them to the back",
        Spread(10, 15, 25),
    ),
    "let out": (
        "Take the old stitching out, overcast the edges, steam the old line, where the label allows it, "
        "and press the seams to the back",
        Spread(12, 20, 30),
    ),
    "felled": (
        "Trim the back layer to 1/4 in, fold the front one over it and fell it flat with two rows of topstitching, as "
        "the old seam was; into the sleeve as far as the machine goes, the rest by hand",
        Spread(30, 45, 70),
    ),
}
"""How side seams are finished, and the minutes it takes."""


def finish_sides(view: View, place: str, way: str) -> Op:
    """Finish and press, `way` being one of FINISH; the hem sewn again over the seams."""
    how, minutes = FINISH[way]
    again = " Fold the hem over the new seams and sew it; where it is made anew later, only pin it."
    hem = "" if at_waist(view, place) else again
    return Op(
        id=f"finish {place}.sides",
        stage="girth",
        verb="finish",
        places=(place,),
        setup="iron",
        minutes=minutes,
        says=f"Take the basting out. {how}.{hem}",
        expects=(Put(f"{place}.sides", "basted"), Put(f"{place}.press", "due")),
        effects=(Put(f"{place}.sides", "sewn"), Put(f"{place}.press", "done")),
        materials=(Need("thread to match"),),
    )


def let_out_sides(view: View, place: str, gains: tuple[Figure, ...], stays: Figure) -> tuple[Op, ...]:
    """Baste both opened seams nearer their raw edges, then sew each: the round gains its part."""
    layers = {
        f"layer_{side}": figure(seams.each_side, f"layer_{side}", total=gain)
        for side, gain in zip(SIDES, gains, strict=True)
    }
    baste = Op(
        id=f"baste {place}.sides further out",
        stage="girth",
        verb="baste",
        places=(place,),
        setup="body",
        minutes=Spread(15, 25, 40),
        says=(
            "Draw the new line {layer_left} outside the old one on each layer of the left seam, {layer_right} on the "
            "right one, down to the hem; run into the old line 4 in inside the sleeve. {stays} stays beyond it. "
            f"Baste, try on. {TRY}"
        ),
        expects=(Put(f"{place}.sides", "open"),),
        effects=(Put(f"{place}.sides", "basted"),),
        try_on=True,
        figures={**layers, "stays": stays},
        materials=(Need("basting thread"), Need("marking chalk")),
    )
    return baste, *_widen(view, place, gains, "let out", "side", "on the basted line, twice under the arm: it gives")


def cut_strips(view: View, place: str, total: Figure, cloth: str) -> Op:
    """Two strips for the side seams, from the hem up into the sleeve."""
    allowance = seam_allowance(view.tape)
    cut = figure(inset_cut, "strip_cut", wanting=total, insets=2, allowance=allowance)
    return _cut(
        view,
        place,
        f"cut {place}.strips",
        "Cut two strips {strip_cut} wide, {seam_allowance} of that for each seam, as long as the side seam and 5 in "
        "more: over those 5 in they run to a point, which lies in the sleeve and is the gusset under the arm. Grain "
        "as in the cloth they meet.",
        {"strip_cut": cut, "seam_allowance": allowance},
        Need(cloth, f"two strips {show(mm_of(cut), view.tape)} wide"),
    )


def cut_gussets(view: View, place: str, total: Figure) -> Op:
    """Two triangles for the side seams below the waist."""
    allowance = seam_allowance(view.tape)
    cut = figure(inset_cut, "gusset_cut", wanting=total, insets=2, allowance=allowance)
    return _cut(
        view,
        place,
        f"cut {place}.gussets",
        "Cut two triangles {gusset_cut} wide at the foot, {seam_allowance} of that for each seam, and as tall as the "
        "side seam is open. The middle of each on the lengthwise grain.",
        {"gusset_cut": cut, "seam_allowance": allowance},
        Need("cloth of like weight for two gussets, washed", f"{show(mm_of(cut), view.tape)} wide at the foot"),
    )


def baste_in(view: View, place: str, what: str) -> Op:
    """Baste the cut pieces into the opened side seams."""
    return Op(
        id=f"baste {place}.{what}",
        stage="girth",
        verb="baste",
        places=(place,),
        setup="body",
        minutes=Spread(20, 30, 45),
        says=f"Baste a {what} into each side seam, its point up. Try on. {TRY}",
        expects=(Put(f"{place}.sides", "open"), Put(f"{place}.strips", "cut")),
        effects=(Put(f"{place}.sides", "basted"),),
        try_on=True,
        materials=(Need("basting thread"),),
    )


def set_in(view: View, place: str, what: str, gains: tuple[Figure, ...]) -> tuple[Op, ...]:
    """Sew each piece in: the round gains its finished width."""
    return _widen(view, place, gains, f"set {what}", what, "along both edges, and pivot at its point: it must give")


def _widen(view: View, place: str, gains: tuple[Figure, ...], verb: str, what: str, how: str) -> tuple[Op, ...]:
    noun = "side seam" if what == "side" else what
    return tuple(
        Op(
            id=f"{verb} {place}.{side}",
            stage="girth",
            verb=verb.partition(" ")[0],
            places=(place,),
            setup="straight",
            minutes=Spread(12, 20, 32),
            says=f"Sew the {side} {noun} {how} {{gain}} altogether.",
            expects=(Put(f"{place}.sides", "basted"),),
            effects=(Change(f"{place}.round", times(gain, 1, f"{verb} {side}")), Put(f"{place}.press", "due")),
            figures={"gain": gain},
            materials=(Need("thread to match"),),
        )
        for side, gain in zip(SIDES, gains, strict=True)
        if mm_of(gain)
    )


def _cut(view: View, place: str, id: str, says: str, figures: dict[str, Figure], need: Need) -> Op:
    return Op(
        id=id,
        stage="girth",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(8, 12, 20),
        says=says,
        expects=(Put(f"{place}.strips", "none"),),
        effects=(Put(f"{place}.strips", "cut"),),
        reversible=False,
        check_before="the cloth has been washed like the garment, and the width was read with the front open",
        figures=figures,
        materials=(need,),
    )
