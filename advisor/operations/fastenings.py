"""Rows of fastenings down a front: the old ones off, strips for a lap, a new row, hooks.

The laws: a lap needs cloth that an edge-to-edge opening does not have; a row closes exactly the run its gaps
add up to; metal and thread that come off leave holes.
"""

from dataclasses import replace
from itertools import pairwise

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Effect, Put
from advisor.core.template import Template
from advisor.core.work import Need, Op, Spread
from advisor.figures.buttons import edge_half_and_quarter, gaps_in, places
from advisor.figures.exact import inches
from advisor.figures.formula import FigureError, figure, figures
from advisor.figures.plackets import strip_cut, strip_length
from advisor.figures.rows import BETWEEN, BODICE_GAP, FLY_GAP, HOOK_GAP, gap, last_down
from advisor.knowledge.view import View, plain
from advisor.lengths import on_tape, show
from advisor.operations.marks import seam_allowance

LAPPED = ("snaps", "buttoned")
"""Fronts closed like this lap already; others need strips for a lap."""
STRIP_FOOT = inches("1")
"""Allowance at the foot of a strip: common practice, no source."""


def metal_is_gone(view: View) -> bool:
    """Whether the metal set in the edge was taken off already, as work of its own."""
    return view.has("hardware") and view.word(f"{view.one('hardware')}.state") == "gone"


def take_snaps_off(view: View, place: str) -> tuple[Op, ...]:
    """All snaps of the front off and the holes mended, one after the other."""
    off = Op(
        id=f"take off {place}.kind",
        stage="open",
        verb="take off",
        places=(place,),
        setup="table",
        minutes=Spread(15, 25, 45),
        says=(
            f"Wear safety glasses: cut metal flies. Nip the posts of the snaps down {view.words(place)} and lift the "
            "parts out both ways; pull nothing through the cloth. Leave none within 1/2 in of a line a needle will "
            "sew."
        ),
        expects=(Put(f"{place}.kind", view.word(f"{place}.kind")),),
        effects=(Put(f"{place}.kind", "none"), Put(f"{place}.old_holes", "there")),
        reversible=False,
        check_before="what will close the front instead is decided and to hand",
        materials=(Need("end cutters or a snap remover"), Need("safety glasses")),
    )
    return off, mend_holes(view, place)


def mend_holes(view: View, place: str) -> Op:
    """The holes that fastenings left in the edge, stayed, patched under and stitched down."""
    return Op(
        id=f"mend {place}.old_holes",
        stage="mend",
        verb="mend",
        places=(place,),
        setup="zigzag",
        minutes=Spread(10, 20, 40),
        says=(
            "Fuse or baste a woven stay behind each hole, lay a patch under it that reaches 3/4 in onto sound cloth "
            "on "
            "every side, corners round, and zigzag hole and patch down, stitches well apart."
        ),
        expects=(Put(f"{place}.old_holes", "there"),),
        effects=(Put(f"{place}.old_holes", "mended"),),
        materials=(Need("woven stay", "a piece for each hole"), Need("cloth of like weight and color, for patches")),
    )


def face_edge(view: View, place: str) -> Op:
    """Bare edges of the opening bound or faced."""
    return Op(
        id=f"face {place}.edge",
        stage="join",
        verb="face",
        places=(place,),
        setup="straight",
        minutes=Spread(20, 35, 55),
        says=(
            "Sew a straight strip of thin firm cloth or a tape along each bare edge, right sides together, turn it "
            "to "
            "the inside, press, and catch its free edge down by hand."
        ),
        expects=(Put(f"{place}.edge", "bare"),),
        effects=(Put(f"{place}.edge", "finished"),),
        materials=(Need("tape or thin firm cloth", "twice the length of the opening"), Need("thread to match")),
    )


def strips(view: View, place: str, run: Figure, kind: str) -> tuple[Op, ...]:
    """Two folded strips along the run: one makes the lap on the lower front, one carries the holes of the upper.

    `kind` is what closes the front while this is done. The strips finish the edges.
    """
    allowance = seam_allowance(view.tape)
    foot = plain("foot", STRIP_FOOT, "common-practice")
    overlap = view.measure(f"{place}.overlap")
    width = figure(strip_cut, "strip_width_cut", overlap=overlap, allowance=allowance)
    length = figure(strip_length, "strip_length_cut", opening=run, top=allowance, bottom=foot)
    known = {
        "overlap": overlap,
        "seam_allowance": allowance,
        "foot": foot,
        "strip_width_cut": width,
        "strip_length_cut": length,
    }
    cut = Op(
        id=f"cut {place}.strip",
        stage="closure",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(12, 20, 30),
        says=(
            "Cut two strips {strip_width_cut} wide and {strip_length_cut} long, lengthwise in the cloth: that is "
            "twice "
            "the lap of {overlap} and twice a seam of {seam_allowance}. Cut at twice the lap alone they would lap "
            "too "
            "little. Fuse an interfacing to one half of each and press them in half."
        ),
        expects=(Put(f"{place}.strip", "none"),),
        effects=(
            Put(f"{place}.strip", "cut"),
            Change(f"{place}.strip_width", width),
            Change(f"{place}.strip_length", length),
        ),
        figures=known,
        materials=(
            Need(
                "woven cloth of like weight and color for the strips, washed",
                f"two strips of {show(mm_of(width), view.tape)} by {show(mm_of(length), view.tape)}",
            ),
            Need("light fusible interfacing"),
        ),
    )
    seam = f"{place}.strip_width"
    sew = Op(
        id=f"sew {place}.strip",
        stage="closure",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(40, 60, 90),
        says=(
            "Sew one folded strip to the edge of the lower front, both its raw edges in one seam of "
            "{seam_allowance}, "
            "so that it stands out past the center; sew the other behind the edge of the upper front. Turn in "
            "{seam_allowance} at the top and {foot} at the foot, press, and bar both strips across the foot."
        ),
        expects=(Put(f"{place}.kind", kind), Put(f"{place}.strip", "cut")),
        effects=(
            Put(f"{place}.strip", "sewn"),
            Put(f"{place}.edge", "finished"),
            Change(seam, times(allowance, -2, "both raw edges in the seam")),
            Change(f"{place}.strip_length", times(allowance, -1, "turned in at the top")),
            Change(f"{place}.strip_length", times(foot, -1, "turned in at the foot")),
        ),
        figures=known,
        materials=(Need("thread to match"),),
    )
    return cut, sew


def row_places(view: View, place: str, run: Figure, to_the_end: bool) -> tuple[Figure, ...]:
    """Where the fastenings go, from the top edge, on the tape: first, bust, waist, last, then what lies between.

    `to_the_end`: the last lies at the end of the run itself (a waist), not above it.
    """
    diameter = view.measure(f"{place}.button")
    first = figure(edge_half_and_quarter, "first", diameter=diameter)
    last = run if to_the_end else figure(last_down, "last", run=run)
    bust, waist = view.measure(f"{place}.top_to_bust"), view.measure(f"{place}.top_to_waist")
    least = mm_of(diameter) + BETWEEN
    if mm_of(last) - mm_of(first) < least:
        raise FigureError("the run is too short for two of these buttons", hint="use smaller ones, or hooks")
    turn = min(mm_of(waist), mm_of(last)) if mm_of(waist) - mm_of(first) >= least else mm_of(last)
    if mm_of(last) - turn < least:
        turn = mm_of(last)
    stress = [bust] if least <= mm_of(bust) - mm_of(first) and least <= turn - mm_of(bust) else []
    middle = last if turn == mm_of(last) else waist
    # Twice the least gap: a span parted into several gaps then never falls under it.
    wide = max(BODICE_GAP, 2 * least)
    # Below the waist a fly is buttoned close; a front that runs on without one goes on as above.
    narrow = max(FLY_GAP, 2 * least) if view.word(f"{place}.fly") == "yes" else wide
    above = plain("bodice_gap", wide, "IASRI-BTN" if wide == BODICE_GAP else "common-practice")
    below = plain("fly_gap", narrow, "common-practice")
    found = figures(places, "place", first=first, last=middle, stress=(*stress, middle), most_gap=above)
    if middle is not last:
        found += figures(places, "fly_place", first=middle, last=last, stress=(middle,), most_gap=below)[1:]
    return tuple(replace(f, id=f"button_{n}", value=on_tape(mm_of(f), view.tape)) for n, f in enumerate(found, start=1))


def mark_row(view: View, place: str, run: Figure, what: str, kind: str, to_the_end: bool = False) -> Op:
    """The new row marked: what it closes is the sum of its gaps, to the end of the run."""
    spots = row_places(view, place, run, to_the_end)
    gaps = [replace(spots[0], id="gap_1")]
    gaps += [figure(gap, f"gap_{n}", upper=a, lower=b) for n, (a, b) in enumerate(pairwise(spots), start=2)]
    rest = figure(gap, "below_last", upper=spots[-1], lower=run) if mm_of(run) > mm_of(spots[-1]) else None
    old = view.measure(f"{place}.closure")
    closing: list[Effect] = [Change(f"{place}.closure", times(old, -1, "what closed it before"))]
    closing += [Change(f"{place}.closure", part) for part in (*gaps, *([rest] if rest else []))]
    listed = ", ".join(f"{{{spot.id}}}" for spot in spots)
    return Op(
        id=f"mark {place}.row",
        stage="closure",
        verb="mark",
        places=(place,),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            f"Mark {len(spots)} {what}, each measured from the top edge and none from the one before: "
            f"{listed}.{_stress_words(view, place, spots)}"
        ),
        expects=(Put(f"{place}.kind", kind), Put(f"{place}.row", "set"), *_lap(view, place, kind)),
        effects=(*closing, Put(f"{place}.row", "marked")),
        figures={spot.id: spot for spot in spots},
        template=Template("row", tuple(spot.id for spot in spots)),
    )


def _stress_words(view: View, place: str, spots: tuple[Figure, ...]) -> str:
    """Which marks are where they are because the front pulls there."""
    at = {mm_of(spot) for spot in spots}
    pulls = {"the fullest part": f"{place}.top_to_bust", "the waist": f"{place}.top_to_waist"}
    named = [words for words, key in pulls.items() if on_tape(view.mm(key), view.tape) in at]
    if not named:
        return ""
    return f" One is at {' and one at '.join(named)}, where the front pulls; the others part what is left."


def needs_strips(view: View, place: str) -> bool:
    """Whether the fronts meet edge to edge, so that a lap has to be made."""
    return view.word(f"{place}.kind") not in LAPPED


def _lap(view: View, place: str, kind: str) -> tuple[Put, ...]:
    """What makes the fronts ready for a row: strips sewn on, or the holes of the old row mended."""
    if needs_strips(view, place):
        return (Put(f"{place}.strip", "sewn"),)
    return (Put(f"{place}.old_holes", "mended"),) if kind == "none" else ()


def set_snaps(view: View, place: str, kind: str) -> Op:
    """New snaps at the marks."""
    return Op(
        id=f"set {place}.row",
        stage="closure",
        verb="set",
        places=(place,),
        setup="table",
        minutes=Spread(20, 30, 50),
        says=(
            "Wear safety glasses. Set one snap on scraps of the same layers and pull it. Then set them at the marks "
            "with their own tool, the upper half first, each lower half marked through its partner with the front "
            "closed."
        ),
        expects=(Put(f"{place}.kind", kind), Put(f"{place}.row", "marked")),
        effects=(Put(f"{place}.row", "set"), Put(f"{place}.kind", "new_snaps")),
        reversible=False,
        check_before="a snap set on scraps holds when pulled, and the marks lie level on both fronts",
        materials=(Need("snaps with their setting tool", "one for each mark and two to spare"), Need("safety glasses")),
    )


def drop_lowest(view: View, place: str, amount: Figure) -> tuple[Op, ...]:
    """The fastenings past the new end off, the holes mended, the rest respaced to end with the opening."""
    kind = view.word(f"{place}.kind")
    how = (
        "Wear safety glasses and nip the posts of the snaps that lie in the cloth that goes or past the end of the "
        "opening, and of any within 1/2 in of a line a needle will sew"
        if kind == "snaps"
        else "Cut off the buttons that lie in the cloth that goes, within 1/2 in of its new seam, or past the end "
        "of the opening"
    )
    off = Op(
        id=f"take off {place}.row",
        stage="open",
        verb="take off",
        places=(place,),
        setup="table",
        minutes=Spread(5, 10, 20),
        says=f"{how}. Keep what comes off for spares.",
        expects=(Put(f"{place}.kind", kind), Put(f"{place}.row", "set")),
        effects=(Put(f"{place}.row", "loose"), Put(f"{place}.old_holes", "there")),
        reversible=kind != "snaps",
        check_before="the line of the new seam is marked" if kind == "snaps" else "",
    )
    respace = Op(
        id=f"respace {place}.row",
        stage="closure",
        verb="respace",
        places=(place,),
        setup="hand",
        minutes=Spread(10, 20, 35),
        says=(
            "Close the front. The row is now to end {shorten_by} sooner, with the opening. Where a gap across a seam "
            "has become too narrow or too wide, move one fastening so that those at the fullest part and the "
            "waist stay."
        ),
        expects=(Put(f"{place}.row", "loose"), Put(f"{place}.old_holes", "mended")),
        effects=(Change(f"{place}.closure", times(amount, -1, "off the row")), Put(f"{place}.row", "set")),
        try_on=True,
        figures={"shorten_by": amount},
    )
    return off, mend_holes(view, place), respace


def add_fastening(view: View, place: str, amount: Figure) -> Op:
    """One fastening more at the open end."""
    return Op(
        id=f"add {place}.row",
        stage="closure",
        verb="add",
        places=(place,),
        setup="hand",
        minutes=Spread(10, 15, 25),
        says=(
            "{open_by} of the opening stands open. Set one fastening more of the same kind at that end; where the "
            "gap "
            "to its neighbor would pass 3 1/2 in, set two."
        ),
        expects=(Put(f"{place}.row", "set"),),
        effects=(Change(f"{place}.closure", amount),),
        figures={"open_by": amount},
        materials=(Need("fastenings like those there", "one or two"),),
    )


def hooks_at_top(view: View, place: str, amount: Figure) -> Op:
    """Hooks and eyes over the part the zipper does not reach."""
    count = figure(gaps_in, "hooks", span=amount, most_gap=plain("hook_gap", HOOK_GAP, "NEWDRESS-117"))
    return Op(
        id=f"sew {place}.hooks",
        stage="closure",
        verb="sew",
        places=(place,),
        setup="hand",
        minutes=Spread(8, 15, 25),
        says=(
            "Close the zipper. Sew {hooks} hooks to the upper edge over the {open_by} it leaves open at the top, the "
            "first close under the edge, and eyes or thread loops to the lower. A strip of cloth behind them keeps "
            "skin from showing."
        ),
        expects=(Put(f"{place}.zipper", "whole"),),
        effects=(Change(f"{place}.closure", amount), Put(f"{place}.zipper", "ready")),
        figures={"open_by": amount, "hooks": count},
        materials=(Need("hooks and eyes"), Need("strong thread")),
    )
