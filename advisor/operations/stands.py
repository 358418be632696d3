"""The buttoned edges of a front: a button sewn on, a hole mended, the front held between two buttons, a row respaced.

The laws: a button that pulls needs two layers; a hole holds as well as the cloth at its end; a front gapes where no
button sits at its fullest part.
"""

from advisor.core.model import Put
from advisor.core.stages import Stage
from advisor.core.work import Need, Op, Setup, Spread
from advisor.knowledge.view import View
from advisor.operations.fastenings import mark_row
from advisor.operations.seams import press

SEWING = (
    "doubled or quadrupled thread, over a match, through two layers at least, and wind the shank: twice by custom, 3 "
    "to 5 times by others"
)


def sew_button(place: str, what: str, expects: tuple[Put, ...] = ()) -> Op:
    """The missing button sewn on; `what` says which button it is."""
    return _op(
        f"sew {place}.missing", "mend", place, "hand", Spread(4, 6, 10),
        f"Mark the place through the finished hole with the front closed. Sew {what} on with {SEWING}.",
        (*expects,), (Put(f"{place}.missing", "sewn"),), (Need("strong thread"),),
    )  # fmt: skip


def take_lowest(place: str) -> Op:
    """The lowest button off."""
    return _op(
        f"take off {place}.lowest", "mend", place, "unpick", Spread(1, 2, 4),
        "Cut the lowest button off over a card; tucked in, nobody sees what takes its place.",
        (Put(f"{place}.lowest", "own"),), (Put(f"{place}.lowest", "bare"),),
    )  # fmt: skip


def sew_lowest(place: str, stage: Stage = "mend") -> Op:
    """An odd button at the lowest place."""
    return _op(
        f"sew {place}.lowest", stage, place, "hand", Spread(3, 5, 8),
        "Sew a button of the same width at the lowest place, whatever its color.",
        (Put(f"{place}.lowest", "bare"),), (Put(f"{place}.lowest", "odd"),),
        (Need("button of the same width", "1"), Need("strong thread")),
    )  # fmt: skip


def new_buttons(place: str) -> tuple[Op, ...]:
    """All buttons off, new ones on."""
    off = _op(
        f"take off {place}.buttons", "mend", place, "unpick", Spread(5, 8, 15),
        "Cut all buttons off over a card, and leave the tail of each thread in the cloth as its mark.",
        (Put(f"{place}.buttons", "on"),), (Put(f"{place}.buttons", "off"),),
    )  # fmt: skip
    on = _op(
        f"sew {place}.buttons", "mend", place, "hand", Spread(25, 40, 60),
        f"Sew the new buttons on at the marks with {SEWING}. They must be as wide as the old: the holes fit those.",
        (Put(f"{place}.buttons", "off"),),
        (Put(f"{place}.buttons", "on"), Put(f"{place}.missing", "sewn")),
        (Need("buttons as wide as the old ones", "a set and two to spare"), Need("strong thread")),
    )  # fmt: skip
    return off, on


def back_button(place: str) -> Op:
    """A patch behind the place where a button tore out."""
    return _op(
        f"back {place}.behind", "mend", place, "zigzag", Spread(8, 15, 25),
        "Slip a scrap of woven cloth between the layers behind the tear, 3/4 in onto sound cloth on every side, or "
        "behind both where there is no way in. Draw the tear together and sew it to the scrap, to and fro.",
        (Put(f"{place}.behind", "bare"),), (Put(f"{place}.behind", "backed"),),
        (Need("woven cloth of like weight", "a scrap"),),
    )  # fmt: skip


def rework_hole(place: str) -> Op:
    """A frayed hole worked over again."""
    return _op(
        f"rework {place}.hole", "mend", place, "hand", Spread(10, 20, 35),
        "Trim loose threads. Beginning at the sound end, work close buttonhole stitches over the old ones all round, "
        "with a bar of four stitches across each end; or zigzag as wide as the old stitching by machine.",
        (Put(f"{place}.hole", "frayed"),), (Put(f"{place}.hole", "reworked"),), (Need("buttonhole thread"),),
    )  # fmt: skip


def patch_hole(view: View, place: str, state: str) -> tuple[Op, ...]:
    """A patch between the layers, the tear stitched to it, the hole cut and worked again."""
    patch = _op(
        f"patch {place}.hole", "mend", place, "straight", Spread(10, 15, 25),
        "Take out the buttonhole stitches round the tear. Slip a scrap of the same color, a little larger than the "
        "tear, between facing and front, and stitch to and fro through all three layers by machine, which holds "
        "better than the hand.",
        (Put(f"{place}.hole", state), Put(f"{place}.hole_patch", "none")), (Put(f"{place}.hole_patch", "set"),),
        (Need("woven cloth of like weight", "a scrap"), Need("thread to match")),
    )  # fmt: skip
    cut = Op(
        id=f"cut {place}.hole",
        stage="mend",
        verb="cut",
        places=(place,),
        setup="buttonhole",
        minutes=Spread(8, 15, 25),
        says=(
            "Work the buttonhole again through the patch, as long as it was, and cut it from the ends toward the "
            "middle."
        ),
        expects=(Put(f"{place}.hole", state), Put(f"{place}.hole_patch", "set")),
        effects=(Put(f"{place}.hole", "patched"), Put(f"{place}.press", "due")),
        reversible=False,
        check_before="a pin lies across each end, and the button passes a hole of that length",
        materials=(Need("thread to match"),),
    )
    return patch, cut, _press(view, place, "mend")


def button_on_top(place: str, state: str) -> Op:
    """The hole sewn shut, its button sewn on top, a snap beneath."""
    return _op(
        f"close {place}.hole", "mend", place, "hand", Spread(12, 18, 30),
        "Draw the edges of the hole together with small stitches over a scrap of cloth, sew the button on top of it, "
        "and a snap between the layers where they lap: one half under the button, one where the button sat.",
        (Put(f"{place}.hole", state),), (Put(f"{place}.hole", "closed"),),
        (Need("small snap", "1"), Need("thread to match")),
    )  # fmt: skip


def hold_between(place: str, kind: str) -> tuple[Op, ...]:
    """A hidden fastening between two buttons; `kind` is "snapped" or "buttoned"."""
    mark = _op(
        f"mark {place}.between", "closure", place, "body", Spread(3, 5, 8),
        "Button the front, reach forward, and mark both layers where it stands open widest, halfway between the two "
        "buttons and clear of the edge.",
        (Put(f"{place}.between", "open"),), (Put(f"{place}.between", "marked"),), try_on=True,
    )  # fmt: skip
    snap = (
        "Sew a small snap at the mark, the ball on the upper layer and through its facing only, the socket below it: "
        "four stitches in each hole."
    )
    button = (
        "Sew a small flat button at the mark on the lower layer, and behind the upper one a thread loop, or a small "
        "buttonhole in its facing only. From outside nothing is seen."
    )
    sew = _op(
        f"sew {place}.between {kind}", "closure", place, "hand",
        Spread(8, 12, 20) if kind == "snapped" else Spread(15, 22, 35),
        snap if kind == "snapped" else button,
        (Put(f"{place}.between", "marked"),), (Put(f"{place}.between", kind),),
        (Need("small snap", "1") if kind == "snapped" else Need("small flat button", "1"), Need("thread to match")),
    )  # fmt: skip
    return mark, sew


def sew_front_shut(place: str) -> Op:
    """The fronts sewn to each other from below the bust down."""
    return _op(
        f"sew {place}.between", "closure", place, "straight", Spread(8, 12, 20),
        "Button it and try whether the head passes with the upper two or three buttons open. Then sew the fronts on "
        "each other along the old topstitching, from 1 in above the place that gapes down to the hem.",
        (Put(f"{place}.between", "open"),), (Put(f"{place}.between", "sewn"),), (Need("thread to match"),), try_on=True,
    )  # fmt: skip


def respace(view: View, place: str, front: str) -> tuple[Op, ...]:
    """A new row with a button at the fullest part: marked, the old holes closed, new ones worked, buttons on."""
    mark = mark_row(view, front, view.measure(f"{front}.opening"), "upright buttonholes", "buttoned")
    count = len(mark.figures)
    close = _op(
        f"close {place}.old_holes", "closure", place, "hand", Spread(30, 45, 75),
        "Cut the buttons off. Draw the edges of each old hole together over a strip of thin cloth between the layers, "
        "with small stitches in matching thread. Steam them, where the label allows it.",
        (Put(f"{place}.old_holes", "open"),), (Put(f"{place}.old_holes", "closed"),),
        (Need("thin woven cloth", "a strip for the old holes"), Need("thread to match")),
    )  # fmt: skip
    work = _op(
        f"work {place}.new_holes", "closure", place, "buttonhole", Spread(3 * count, 5 * count, 8 * count),
        f"Try one on scraps of the same layers. Work the {count} holes upright on the center line, as long as the old "
        "ones, each beginning 1/8 in above its mark.",
        (Put(f"{place}.old_holes", "closed"), Put(f"{front}.row", "marked"), Put(f"{place}.new_holes", "none")),
        (Put(f"{place}.new_holes", "worked"),), (Need("thread to match"),),
    )  # fmt: skip
    cut = Op(
        id=f"cut {place}.new_holes",
        stage="closure",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(count, count, 2 * count),
        says="Pin across both ends of each hole and cut it from the ends toward the middle.",
        expects=(Put(f"{place}.new_holes", "worked"),),
        effects=(Put(f"{place}.new_holes", "cut"),),
        reversible=False,
        check_before="the button passes the hole worked on scraps, and one hole lies at the fullest part",
    )
    sew = _op(
        f"sew {front}.buttons upright", "closure", place, "hand", Spread(3 * count, 5 * count, 8 * count),
        f"Close the front and mark the {count} buttons through the new holes, 1/8 in below the top of each. Sew them "
        f"on with {SEWING}.",
        (Put(f"{place}.new_holes", "cut"), Put(f"{front}.row", "marked")),
        (Put(f"{place}.between", "respaced"), Put(f"{front}.row", "set"), Put(f"{place}.press", "due")),
        (Need("buttons like the old ones", f"{count}"), Need("strong thread")), try_on=True,
    )  # fmt: skip
    return mark, close, work, cut, sew, _press(view, place, "closure")


def _press(view: View, place: str, stage: Stage) -> Op:
    words = f"{view.words(place)}, over a towel, from the wrong side"
    return press(f"{place}.press", words, Spread(3, 5, 8), stage)


def _op(
    id: str, stage: Stage, place: str, setup: Setup, minutes: Spread, says: str, expects: tuple[Put, ...],
    effects: tuple[Put, ...], materials: tuple[Need, ...] = (), try_on: bool = False,
) -> Op:  # fmt: skip
    """A step that only moves states on."""
    return Op(
        id=id,
        stage=stage,
        verb=id.partition(" ")[0],
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=expects,
        effects=effects,
        try_on=try_on,
        materials=materials,
    )
