"""Cuffs: worn edges turned, bound, faced, renewed; the slit above them; sleeves shortened or lengthened at a cuff.

The laws: what is trimmed off a cuff is gone from the sleeve; what is cut off a sleeve above its cuff is gone from the
slit too; the band of a slit is as long as the slit. Both cuffs are done alike.
"""

from dataclasses import replace

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Setup, Spread
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.hems import keep_edge_fold
from advisor.figures.letout import inset_cut
from advisor.knowledge.view import View, plain
from advisor.operations.hem_bands import take_cuff_off
from advisor.operations.levels import across
from advisor.operations.marks import seam_allowance
from advisor.operations.seams import open_seam, press

TRIM = inches("1/4")
"""What is trimmed off a worn edge before it is faced: common practice, no source."""


def open_cuffs(view: View, place: str) -> Op:
    """Both cuffs off their sleeves."""
    words = (
        f"{view.words(place)} from the sleeves, after marking where every pleat, the seam and the slit meet them. If "
        "the sleeves are to be made shorter too, do both while the cuffs are off"
    )
    return open_seam(f"{place}.seam", words, Spread(15, 25, 40))


def back_edge(view: View, place: str) -> Op:
    """The worn edge strengthened inside."""
    return _on_edge(
        place, "back", "hand", Spread(8, 15, 25), "backed",
        "Trim loose threads and lay a strip of thin woven cloth, or of fusible interfacing where an iron may go, "
        "inside along the worn edge, 1/2 in past it. Darn the worst through one layer only.",
        Need("thin woven cloth or light fusible interfacing", "two strips"),
    )  # fmt: skip


def turn_cuffs(view: View, place: str) -> Op:
    """The cuffs sewn on again inside out."""
    return _sew_on(
        view,
        place,
        "turned",
        f"turn {place}.worn",
        "Turn each cuff over, so that the whole side is outside; the right cuff goes to the right sleeve, its button "
        "to the same side as before. Baste on at the marks, sew on the old line with stitches of about 2 mm, and "
        "sew the buttons to the new outside.",
        (Put(f"{place}.edge", "backed"),),
    )


def bind_cuffs(view: View, place: str) -> tuple[Op, ...]:
    """The worn edge shut into a narrow binding."""
    cut = _cut_strip(place, "Cut two bias strips 1 1/4 in wide and 1 in longer than the edge of a cuff, and fold them.")
    sew = Op(
        id=f"bind {place}.worn",
        stage="mend",
        verb="bind",
        places=(place,),
        setup="straight",
        minutes=Spread(20, 30, 45),
        says=(
            "Trim loose threads. Sew a strip along the edge, right sides together, 1/4 in in; fold it over the edge, "
            "its ends turned in, and stitch it down by hand inside. Nothing is taken off the length."
        ),
        expects=(Put(f"{place}.strip", "cut"),),
        effects=(Put(f"{place}.worn", "bound"), Put(f"{place}.press", "due")),
        materials=(Need("thread to match"),),
    )
    return cut, sew, press_cuffs(view, place)


def face_cuffs(view: View, place: str) -> tuple[Op, ...]:
    """The worn edge trimmed away and faced: the sleeves are shorter by what was trimmed."""
    off = plain("off", TRIM, "common-practice")
    trim = Op(
        id=f"trim {place}.edge",
        stage="mend",
        verb="trim",
        places=(place,),
        setup="table",
        minutes=Spread(5, 8, 12),
        says="Draw a line {off} inside the worn edge of each cuff and cut along it, past everything thin.",
        expects=(Put(f"{place}.edge", "bare"), Put(f"{place}.strip", "cut")),
        effects=(*across(view, place, off, -1), Put(f"{place}.edge", "trimmed")),
        reversible=False,
        check_before="the sleeves are long enough without it, and the line is clear of buttonhole and button",
        figures={"off": off},
    )
    sew = Op(
        id=f"face {place}.worn",
        stage="mend",
        verb="face",
        places=(place,),
        setup="straight",
        minutes=Spread(25, 35, 55),
        says=(
            "Open the ends of each cuff 1/2 in, turn both cut edges in by 1/8 in and lay a strip of thin cloth between "
            "them; baste, edgestitch, and topstitch as the cuff was."
        ),
        expects=(Put(f"{place}.edge", "trimmed"), Put(f"{place}.strip", "cut")),
        effects=(Put(f"{place}.worn", "faced"), Put(f"{place}.press", "due")),
        materials=(Need("thread to match"),),
    )
    cut = _cut_strip(place, "Cut two strips of thin cloth 1 in wide and as long as the edge of a cuff.")
    return cut, trim, sew, press_cuffs(view, place)


def new_cuffs(view: View, place: str, cloth: str) -> tuple[Op, ...]:
    """New cuffs cut by the old, made, and set on."""
    cut = _step(
        place, "cut", "table", Spread(15, 20, 35), "none", "cut",
        "Press one cuff flat, take its layers apart and cut four new ones by it, with interfacing for two. The grain "
        "runs as in the old.",
        (Need(cloth, "four pieces of the cuff"), Need("light fusible interfacing", "for two cuffs")),
    )  # fmt: skip
    make = _step(
        place, "make", "buttonhole", Spread(30, 45, 70), "cut", "made",
        "Sew each pair round three sides, trim, turn, press and topstitch. Work a buttonhole at the old place and sew "
        "the button on.",
        (Need("thread to match"),),
    )  # fmt: skip
    sew = _sew_on(
        view,
        place,
        "replaced",
        f"set {place}.new",
        "Baste the new cuffs to the sleeves at the marks, right to right; try on, the arm bent; sew, and topstitch.",
        (Put(f"{place}.new", "made"),),
    )
    return cut, make, sew


def press_cuffs(view: View, place: str) -> Op:
    """The cuffs pressed."""
    return press(f"{place}.press", view.words(place), Spread(4, 6, 10), "mend")


def with_slit(view: View, sleeve: str, op: Op, off: Figure) -> Op:
    """`op`, which takes `off` out of a sleeve above its cuff, and out of all that ends in that cuff."""
    return replace(op, effects=(*op.effects, *across(view, sleeve, off, -1)))


def tuck_sleeves(view: View, sleeve: str, long: Figure) -> tuple[Op, ...]:
    """A tuck round the upper sleeve, clear of the slit."""
    depth = figure(keep_edge_fold, "depth", too_long=long)
    pin = Op(
        id=f"pin {sleeve}.tuck above the elbow",
        stage="hem",
        verb="pin",
        places=(sleeve,),
        setup="body",
        minutes=Spread(6, 10, 18),
        says=(
            f"With the arm bent a little, pin a fold all round {view.words(sleeve)} above the elbow, {{depth}} from "
            "fold to stitching: it takes {long}. Pin the other by the first, measured from the shoulder."
        ),
        expects=(Put(f"{sleeve}.tuck", "none"), Put(f"{sleeve}.hem", "sewn")),
        effects=(Put(f"{sleeve}.tuck", "pinned"),),
        needs=(f"measure {sleeve}.sides",),
        try_on=True,
        figures={"depth": depth, "long": long},
    )
    sew = Op(
        id=f"sew {sleeve}.tuck above the elbow",
        stage="hem",
        verb="sew",
        places=(sleeve,),
        setup="straight",
        minutes=Spread(15, 22, 35),
        says=(
            "Sew round both sleeves on the pinned line: {long} is taken up. Press the fold up inside and catch it to "
            "the seam. Cuff and slit stay as they are, and it comes out again with one thread."
        ),
        expects=(Put(f"{sleeve}.tuck", "pinned"),),
        effects=(Change(f"{sleeve}.length", times(depth, -2, "taken")), Put(f"{sleeve}.tuck", "sewn")),
        figures={"long": long},
        materials=(Need("thread to match"),),
    )
    return pin, sew


def tighten_cuffs(view: View, sleeve: str, place: str, long: Figure) -> Op:
    """The cuff buttons moved in: the cuffs hold at the wrist, and the sleeves may be longer."""
    return Op(
        id=f"move {place}.button",
        stage="hem",
        verb="move",
        places=(place,),
        setup="body",
        minutes=Spread(8, 12, 20),
        says=(
            "Pin each cuff so close that it stops at the wrist bone, one finger beneath, and sew the button there, "
            "through two layers. The {long} that was too much blouses over the cuff."
        ),
        expects=(Put(f"{place}.button", "sewn"),),
        effects=(Change(f"{sleeve}.wanted", times(long, 1, "held at the wrist")), Put(f"{place}.button", "moved")),
        try_on=True,
        figures={"long": long},
        materials=(Need("strong thread"),),
    )


def deeper_cuffs(view: View, sleeve: str, short: Figure) -> tuple[Op, ...]:
    """New cuffs, deeper by what the sleeves lack."""
    allowance = seam_allowance(view.tape)
    more = figure(inset_cut, "more", wanting=times(short, 2, "both layers"), insets=1, allowance=0)
    cut = Op(
        id=f"cut deeper cuff {sleeve}.strip",
        stage="hem",
        verb="cut",
        places=(sleeve,),
        setup="table",
        minutes=Spread(15, 20, 35),
        says=(
            "Cut two new cuffs by the old ones, each {short} deeper when it is finished: cut in one with its lining, "
            "folded at the edge, that is {more} more, and {seam_allowance} all round for the seams. Interface one half."
        ),
        expects=(Put(f"{sleeve}.strip", "none"),),
        effects=(Put(f"{sleeve}.strip", "cut"),),
        reversible=False,
        check_before="the cloth has been washed like the garment",
        figures={"short": short, "more": more, "seam_allowance": allowance},
        materials=(Need("cloth for two cuffs, matching or meant to differ"), Need("light fusible interfacing")),
    )
    sew = Op(
        id=f"set deeper cuff on {sleeve}.hem",
        stage="hem",
        verb="set",
        places=(sleeve,),
        setup="buttonhole",
        minutes=Spread(50, 75, 110),
        says=(
            "Sew the ends of each cuff, turn, press; baste it to the sleeve at the marks, try on with the arm bent, "
            "sew and topstitch. Work the buttonhole and sew the button on. The sleeve ends {short} lower."
        ),
        expects=(Put(f"{sleeve}.hem", "open"), Put(f"{sleeve}.strip", "cut")),
        effects=(Change(f"{sleeve}.length", short), Put(f"{sleeve}.hem", "sewn")),
        try_on=True,
        figures={"short": short},
        materials=(Need("thread to match"),),
    )
    return take_cuff_off(view, sleeve), cut, sew


def lengthen_slits(view: View, place: str, by: Figure) -> tuple[Op, ...]:
    """The slits cut further up, and a longer band sewn in."""
    cut = Op(
        id=f"cut {place}.slit",
        stage="finish",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(6, 10, 15),
        says=(
            "Take the band out of the upper half of each slit. Reinforce with stitches round the new end, {by} further "
            "up along the thread, and cut up to it."
        ),
        expects=(Put(f"{place}.slit", "whole"),),
        effects=(Change(f"{place}.placket", by), Put(f"{place}.slit", "cut")),
        reversible=False,
        check_before="the new end lies along the thread and clear of the seam",
        figures={"by": by},
        materials=(Need("seam ripper"),),
    )
    sew = Op(
        id=f"bind {place}.slit",
        stage="finish",
        verb="bind",
        places=(place,),
        setup="straight",
        minutes=Spread(25, 40, 60),
        says=(
            "Piece the band {by} longer, its join beneath the lap, or cut a new one. Sew it round the slit, a pleat's "
            "breadth at the end, fold it over and stitch it down; bar the end through all layers."
        ),
        expects=(Put(f"{place}.slit", "cut"),),
        effects=(Change(f"{place}.binding", by), Put(f"{place}.slit", "bound"), Put(f"{place}.press", "due")),
        figures={"by": by},
        materials=(Need("thin cloth for the bands of two slits"), Need("thread to match")),
    )
    pressed = press(f"{place}.press", f"the slits above {view.words(place)}", Spread(3, 5, 8), "finish")
    # An id of its own: worn cuffs are pressed long before the slits are cut.
    after = replace(pressed, id=f"press {place}.slit")
    return cut, sew, after


def refit_binding(view: View, place: str, over: Figure) -> Op:
    """The band of a slit made as long as the slit."""
    short = mm_of(over) < 0
    by = times(over, -1 if short else 1, "by")
    return Op(
        id=f"refit {place}.binding",
        stage="finish",
        verb="refit",
        places=(place,),
        setup="straight",
        minutes=Spread(15, 25, 40),
        says=f"Unpick the upper half of the band, make it {{by}} {'longer' if short else 'shorter'}, sew it on again.",
        effects=(Change(f"{place}.binding", times(over, -1, "refitted")),),
        figures={"by": by},
        materials=(Need("thread to match"),),
    )


def _cut_strip(place: str, says: str) -> Op:
    return Op(
        id=f"cut {place}.strip",
        stage="mend",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(8, 12, 20),
        says=says,
        expects=(Put(f"{place}.strip", "none"),),
        effects=(Put(f"{place}.strip", "cut"),),
        materials=(Need("thin firm cloth for two strips, washed"),),
    )


def _on_edge(place: str, verb: str, setup: Setup, minutes: Spread, after: str, says: str, need: Need) -> Op:
    return Op(
        id=f"{verb} {place}.edge",
        stage="mend",
        verb=verb,
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=(Put(f"{place}.edge", "bare"),),
        effects=(Put(f"{place}.edge", after),),
        materials=(need,),
    )


def _sew_on(view: View, place: str, word: str, id: str, says: str, expects: tuple[Put, ...]) -> Op:
    return Op(
        id=id,
        stage="mend",
        verb=id.partition(" ")[0],
        places=(place,),
        setup="straight",
        minutes=Spread(25, 40, 60),
        says=says,
        expects=(Put(f"{place}.seam", "open"), *expects),
        effects=(Put(f"{place}.worn", word), Put(f"{place}.seam", "sewn"), Put(f"{place}.press", "due")),
        try_on=True,
        materials=(Need("thread to match"),),
    )


def _step(
    place: str, verb: str, setup: Setup, minutes: Spread, before: str, after: str, says: str, needs: tuple[Need, ...]
) -> Op:
    return Op(
        id=f"{verb} {place}.new",
        stage="mend",
        verb=verb,
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=(Put(f"{place}.new", before),),
        effects=(Put(f"{place}.new", after),),
        materials=needs,
    )
