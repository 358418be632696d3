"""Collars: the leaf off and on, turned, renewed, left off; the fold mended; the neck made wider or closer.

The law: a button moved by n toward the edge of its band gives n round the neck, and takes n moved the other way; a
loop that shows n gives n; a tuck that takes n in the stand takes n off the neck.
"""

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Setup, Spread
from advisor.figures.formula import figure
from advisor.figures.pleats import depth_each
from advisor.knowledge.view import View
from advisor.operations.seams import open_seam, press


def open_leaf(view: View, place: str) -> Op:
    """The leaf of the collar out of its seam."""
    held = "the stand" if view.word(f"{place}.kind") == "stand" else "the neck"
    words = f"the leaf of {view.words(place)} from {held}, after marking center back on both, and keep its shape"
    return open_seam(f"{place}.seam", words, Spread(12, 20, 35))


def back_fold(view: View, place: str) -> Op:
    """The worn fold strengthened from behind."""
    return Op(
        id=f"back {place}.fold",
        stage="mend",
        verb="back",
        places=(place,),
        setup="iron",
        minutes=Spread(8, 15, 25),
        says=(
            "Trim loose threads. Lay a strip of thin woven cloth, or of light fusible interfacing where an iron may "
            "go, behind the worn fold, 1/2 in past it on all sides, and darn the worst through that layer only with "
            "close straight stitches to and fro."
        ),
        expects=(Put(f"{place}.fold", "bare"),),
        effects=(Put(f"{place}.fold", "backed"),),
        materials=(Need("thin woven cloth or light fusible interfacing", "a strip for the fold"),),
    )


def turn_leaf(view: View, place: str) -> Op:
    """The leaf sewn in again the other way up: the whole side is on top."""
    return _sew_in(
        view,
        place,
        "turned",
        f"turn {place}.leaf",
        "Turn the leaf over, so that the mended side lies beneath. Slip it back between the layers, center back first, "
        "then the two ends, and baste. Sew on the old line with stitches of about 2 mm, the ends twice.",
        (Put(f"{place}.fold", "backed"),),
    )


def stitch_fold(view: View, place: str) -> Op:
    """The backed fold stitched down in place."""
    return Op(
        id=f"stitch {place}.fold",
        stage="mend",
        verb="stitch",
        places=(place,),
        setup="straight",
        minutes=Spread(10, 15, 25),
        says=(
            "With the collar opened out, sew rows 1/8 in apart along the fold from end to end, through the top layer "
            "and its backing, in thread of the color of the cloth: a band of quilting is less seen than one darn."
        ),
        expects=(Put(f"{place}.fold", "backed"),),
        effects=(Put(f"{place}.worn", "patched"), Put(f"{place}.press", "due")),
        materials=(Need("thread to match"),),
    )


def new_leaf(view: View, place: str, cloth: str) -> tuple[Op, ...]:
    """A new leaf cut by the old one, made, and sewn in."""
    cut = _step(
        place, "cut", "table", Spread(15, 20, 35), "none", "cut",
        "Press the old leaf flat, take its two layers apart and cut two new ones by them, with interfacing for one. "
        "The grain runs as in the old.",
        (Need(cloth, "two layers of the leaf"), Need("light fusible interfacing", "for the leaf")),
    )  # fmt: skip
    make = _step(
        place, "make", "straight", Spread(20, 30, 50), "cut", "made",
        "Sew the leaf along its outer edges, the lower layer pulled 1/16 in over so that the seam rolls under. Trim "
        "the corners, turn, press, and topstitch as the old one was.",
        (Need("thread to match"),),
    )  # fmt: skip
    sew = _sew_in(
        view,
        place,
        "replaced",
        f"set {place}.leaf",
        "Slip the new leaf between the layers, center back first, then the two ends, and baste. Try on. Sew on the old "
        "line, the ends twice.",
        (Put(f"{place}.leaf", "made"),),
    )
    return cut, make, sew


def close_stand(view: View, place: str) -> Op:
    """The stand sewn shut without a leaf: a standing band is left."""
    return _sew_in(
        view,
        place,
        "taken off",
        f"close {place}.stand",
        "Turn the upper edges of both layers of the stand in, baste them on each other, and edgestitch from end to "
        "end. Keep the leaf: it can be sewn in again.",
        (),
    )


def press_collar(view: View, place: str) -> Op:
    """The collar pressed, from the points inward."""
    return press(f"{place}.press", f"{view.words(place)}, from the ends to center back", Spread(4, 6, 10), "mend")


def move_button(view: View, place: str, by: Figure, wider: bool) -> tuple[Op, ...]:
    """The button of the neck sewn on further out, or further in."""
    way = "toward the end of the band, for more room" if wider else "away from the end of the band"
    off = Op(
        id=f"take off {place}.button",
        stage="closure",
        verb="take off",
        places=(place,),
        setup="unpick",
        minutes=Spread(2, 3, 5),
        says="Cut the button at the neck off over a card, and brush the threads out.",
        expects=(Put(f"{place}.button", "sewn"),),
        effects=(Put(f"{place}.button", "off"),),
    )
    sew = Op(
        id=f"sew {place}.button",
        stage="closure",
        verb="sew",
        places=(place,),
        setup="hand",
        minutes=Spread(4, 6, 10),
        says=f"Sew it on again {{by}} {way}, through two layers at least, with a short shank. Try it, two fingers in.",
        expects=(Put(f"{place}.button", "off"),),
        effects=(Change(f"{place}.round", times(by, 1 if wider else -1, "moved")), Put(f"{place}.button", "sewn")),
        try_on=True,
        figures={"by": by},
        materials=(Need("strong thread"),),
    )
    return off, sew


def extend_neck(view: View, place: str, by: Figure) -> tuple[Op, ...]:
    """A loop with a button of its own, between the button and the hole of the neck."""
    make = Op(
        id=f"make {place}.extender",
        stage="closure",
        verb="make",
        places=(place,),
        setup="hand",
        minutes=Spread(5, 10, 15),
        says=(
            "Sew a flat button to one end of a short elastic loop or a doubled cord. Buttoned, the loop must hold its "
            "own button {by} away from the old one."
        ),
        expects=(Put(f"{place}.extender", "none"),),
        effects=(Put(f"{place}.extender", "made"),),
        figures={"by": by},
        materials=(Need("thin elastic or cord", "a finger's length"), Need("flat button")),
    )
    sew = Op(
        id=f"set {place}.extender",
        stage="closure",
        verb="set",
        places=(place,),
        setup="body",
        minutes=Spread(2, 3, 5),
        says="Hang the loop on the old button and try on: it gives {by}. A tie or a scarf covers what opens.",
        expects=(Put(f"{place}.extender", "made"),),
        effects=(Change(f"{place}.round", by), Put(f"{place}.extender", "set")),
        try_on=True,
        figures={"by": by},
    )
    return make, sew


def tuck_stand(view: View, place: str, by: Figure) -> tuple[Op, ...]:
    """A tuck in the stand at center back, under the leaf."""
    depth = figure(depth_each, "depth", excess=by, pleats=1)
    pin = Op(
        id=f"pin {place}.tuck",
        stage="closure",
        verb="pin",
        places=(place,),
        setup="body",
        minutes=Spread(4, 6, 10),
        says="Lift the leaf and pin a tuck in the stand at center back, {depth} deep: it takes {by}. Try on.",
        expects=(Put(f"{place}.tuck", "none"),),
        effects=(Put(f"{place}.tuck", "pinned"),),
        try_on=True,
        figures={"by": by, "depth": depth},
    )
    sew = Op(
        id=f"sew {place}.tuck",
        stage="closure",
        verb="sew",
        places=(place,),
        setup="hand",
        minutes=Spread(8, 12, 20),
        says="Sew the tuck by hand from the fold down to the neck seam, {by} in all, and flatten it to one side.",
        expects=(Put(f"{place}.tuck", "pinned"),),
        effects=(
            Change(f"{place}.round", times(by, -1, "tucked")),
            Put(f"{place}.tuck", "sewn"),
            Put(f"{place}.press", "due"),
        ),
        figures={"by": by},
        materials=(Need("thread to match"),),
    )
    after = press(f"{place}.press", f"{view.words(place)} at center back", Spread(2, 3, 5), "closure")
    return pin, sew, after


def _sew_in(view: View, place: str, word: str, id: str, says: str, expects: tuple[Put, ...]) -> Op:
    return Op(
        id=id,
        stage="mend",
        verb=id.partition(" ")[0],
        places=(place,),
        setup="straight",
        minutes=Spread(15, 25, 40),
        says=says,
        expects=(Put(f"{place}.seam", "open"), *expects),
        effects=(Put(f"{place}.worn", word), Put(f"{place}.seam", "sewn"), Put(f"{place}.press", "due")),
        materials=(Need("thread to match"),),
    )


def _step(
    place: str, verb: str, setup: Setup, minutes: Spread, before: str, after: str, says: str, needs: tuple[Need, ...]
) -> Op:
    return Op(
        id=f"{verb} {place}.leaf",
        stage="mend",
        verb=verb,
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=(Put(f"{place}.leaf", before),),
        effects=(Put(f"{place}.leaf", after),),
        materials=needs,
    )
