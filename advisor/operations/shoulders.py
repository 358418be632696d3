"""Shoulders of a set-in sleeve: the armhole moved, a tuck, a pad.

The law: what comes off a shoulder draws the whole sleeve up by as much; what is let out there lets it down. Both
shoulders are done alike.
"""

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.pleats import depth_each
from advisor.knowledge.view import View
from advisor.operations.levels import across
from advisor.operations.seams import open_seam, press

KEEP = inches("1/4")
"""What stays of an armhole seam on the body side, sewn twice: common practice, no source."""


def open_armhole(view: View, place: str) -> Op:
    """The upper half of both sleeves out of the armholes."""
    felled = view.word(f"{place}.armhole") == "felled"
    words = "both sleeves from the armholes, over the top from notch to notch, after marking front, back and shoulder"
    return open_seam(f"{place}.seam", words, Spread(30, 45, 70) if felled else Spread(12, 20, 35))


def mark_armhole(view: View, place: str, by: Figure) -> Op:
    """The new armhole line on the body."""
    return Op(
        id=f"mark {place}.line",
        stage="girth",
        verb="mark",
        places=(place,),
        setup="body",
        minutes=Spread(10, 15, 25),
        says=(
            "With the garment on, mark the new armhole {by} inside the old one at the shoulder, along the edge of the "
            "bone; run into the old line at the notches, front and back. Left and right each for itself, then compare. "
            "Baste the sleeves over it on the new line, nothing cut yet, and lift both arms; then take the basting out."
        ),
        expects=(Put(f"{place}.line", "none"), Put(f"{place}.seam", "open")),
        effects=(Put(f"{place}.line", "marked"),),
        try_on=True,
        figures={"by": by},
        materials=(Need("marking chalk"), Need("basting thread")),
    )


def cut_armhole(view: View, place: str, by: Figure) -> Op:
    """The armholes cut in: the shoulders lose `by`, and the sleeves rise with them."""
    return Op(
        id=f"cut {place}.line",
        stage="girth",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(8, 12, 20),
        says=(
            "Cut both armholes at the old seam allowance outside the new line: {by} falls away at the shoulder and "
            "nothing at the notches. The sleeves will hang {by} higher."
        ),
        expects=(Put(f"{place}.line", "marked"), Put(f"{place}.seam", "open")),
        effects=(
            Change(f"{place}.length", times(by, -1, "cut off")),
            *across(view, place, by, -1),
            Put(f"{place}.line", "cut"),
        ),
        reversible=False,
        check_before="the basted sleeve was tried on with both arms lifted, and its length is right without that much",
        figures={"by": by},
    )


def let_out_armhole(view: View, place: str, by: Figure) -> Op:
    """The armhole seam drawn nearer its raw edge on the body side: the shoulders gain `by`."""
    return Op(
        id=f"let out {place}.line",
        stage="girth",
        verb="let out",
        places=(place,),
        setup="body",
        minutes=Spread(10, 15, 25),
        says=(
            "On the body side draw the new line {by} outside the old one at the shoulder, running into it at the "
            "notches; on the sleeve keep the old line. Baste the sleeves in and try on with both arms lifted. They "
            "will hang {by} lower."
        ),
        expects=(Put(f"{place}.line", "none"), Put(f"{place}.seam", "open")),
        effects=(
            Change(f"{place}.length", times(by, 1, "let out")),
            *across(view, place, by, 1),
            Put(f"{place}.line", "let out"),
        ),
        try_on=True,
        figures={"by": by},
    )


def set_sleeves(view: View, place: str, line: str) -> Op:
    """Both sleeves back in their armholes."""
    return Op(
        id=f"sew {place}.seam",
        stage="girth",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(30, 45, 75),
        says=(
            "Baste the sleeves in at the marks, the sleeve on top, and ease what is over into the upper third without "
            "a fold. Try on, lift both arms. Sew twice, 1/8 in apart, and finish the edges as they were."
        ),
        expects=(Put(f"{place}.seam", "open"), Put(f"{place}.line", line)),
        effects=(Put(f"{place}.seam", "sewn"), Put(f"{place}.press", "due")),
        try_on=True,
        materials=(Need("thread to match"), Need("basting thread")),
    )


def press_shoulders(view: View, place: str) -> Op:
    """The new seams pressed."""
    return press(f"{place}.press", f"the new stitching of {view.words(place)}", Spread(5, 8, 12), "girth")


def tuck_shoulders(view: View, place: str, by: Figure) -> tuple[Op, ...]:
    """A tuck down from each shoulder seam: the shoulders lose `by`, and the sleeves rise with them."""
    depth = figure(depth_each, "depth", excess=by, pleats=1)
    pin = Op(
        id=f"pin {place}.tuck",
        stage="girth",
        verb="pin",
        places=(place,),
        setup="body",
        minutes=Spread(8, 12, 20),
        says=(
            "With the garment on, pin a tuck halfway along each shoulder, {depth} from fold to stitching: it takes "
            "{by}. Let it run 4 to 5 in down in front, and as far at the back, and open out from there. Lift both arms."
        ),
        expects=(Put(f"{place}.tuck", "none"),),
        effects=(Put(f"{place}.tuck", "pinned"),),
        try_on=True,
        figures={"by": by, "depth": depth},
    )
    sew = Op(
        id=f"sew {place}.tuck",
        stage="girth",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(10, 15, 25),
        says="Sew both tucks from the shoulder down, alike, and tie the ends. The sleeves now hang {by} higher.",
        expects=(Put(f"{place}.tuck", "pinned"),),
        effects=(
            Change(f"{place}.length", times(by, -1, "in the tuck")),
            *across(view, place, by, -1),
            Put(f"{place}.tuck", "sewn"),
            Put(f"{place}.press", "due"),
        ),
        figures={"by": by},
        materials=(Need("thread to match"),),
    )
    return pin, sew, press_shoulders(view, place)


def set_pads(view: View, place: str, by: Figure) -> tuple[Op, ...]:
    """Pads that carry the shoulder out: the garment stays, the body wants more."""
    make = Op(
        id=f"make {place}.pad",
        stage="girth",
        verb="make",
        places=(place,),
        setup="hand",
        minutes=Spread(10, 20, 35),
        says="Make or choose a pair of thin pads, covered in cloth of the color of the skin or the lining.",
        expects=(Put(f"{place}.pad", "none"),),
        effects=(Put(f"{place}.pad", "made"),),
        materials=(Need("thin shoulder pads, a pair"),),
    )
    sew = Op(
        id=f"set {place}.pad",
        stage="girth",
        verb="set",
        places=(place,),
        setup="body",
        minutes=Spread(10, 15, 25),
        says=(
            "With the garment on, push each pad out until it reaches {by} past the bone and carries the seam. Pin, "
            "try the arms, and tack it to the shoulder seam and the armhole seam in three places, loosely."
        ),
        expects=(Put(f"{place}.pad", "made"),),
        effects=(Change(f"{place}.wanted", times(by, 1, "carried by the pad")), Put(f"{place}.pad", "set")),
        try_on=True,
        figures={"by": by},
        materials=(Need("thread to match"),),
    )
    return make, sew
