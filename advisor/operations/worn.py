"""Worn places: patches under, over, fused or glued, darns, thin cloth backed; burst seams sewn again.

The law: a cover reaches from sound cloth to sound cloth, so its size is counted from the weak cloth and not from
the hole; at a knee or seat, where it is strained, it reaches further.
"""

from advisor.core.figure import Figure, mm_of
from advisor.core.model import Change, Mm, Put
from advisor.core.work import Need, Op, Setup, Spread
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.patches import cut, finished
from advisor.knowledge.view import View, plain

STRAINED = ("knee", "thigh")
PLAIN = ("patched", "covered", "glued", "backed")
MARGIN, FURTHER = inches("3/4"), inches("1")
"""Past sound cloth: 3/4 in, source SCHOOLSEW-P; further at seats and knees, source SCHOOLSEW-P, 1 in by UMA-PATCH."""
SMALL = inches("1/2")
"""A darn begins so far in sound cloth, source SCHOOLSEW-D; a fused piece reaches so far at the least, source MAKERP."""
TURN = inches("1/4")
"""Turned under all round, source UMA-PATCH."""
AT = {
    "elsewhere": "where nothing pulls or rubs",
    "knee": "at a knee or an elbow",
    "thigh": "at the inner thighs or the seat",
    "edge": "at a pocket mouth, a hem or another edge",
}
"""Where a worn place is, as one says it."""
NO_HOLE = ("backed", "stayed")
"""Covers of cloth that is thin and has no hole."""


def beyond(word: str, where: str) -> Mm:
    """How far a cover of this kind reaches onto sound cloth, mm."""
    if word not in PLAIN:
        return SMALL
    return FURTHER if where in STRAINED else MARGIN


def wide(word: str, where: str, hole: Mm, weak: Mm) -> Mm:
    """How wide a cover of this kind must be, mm."""
    return finished(Mm(0) if word in NO_HOLE else hole, weak, beyond(word, where))


def cover_of(view: View, place: str, word: str) -> Figure:
    """The same as a figure."""
    margin = plain("margin", beyond(word, view.word(f"{place}.where")), "SCHOOLSEW-P")
    hole = plain("no_hole", Mm(0), "case") if word in NO_HOLE else view.measure(f"{place}.hole")
    return figure(finished, "cover", hole=hole, weak=view.measure(f"{place}.weak"), margin=margin)


def cut_cover(view: View, place: str, word: str, cloth: str, turned: bool = False) -> Op:
    """Cut what goes over or under the place: larger by the turn where its edges are turned under."""
    size = cover_of(view, place, word)
    known, how = {"cover": size}, "Cut a piece {cover} wide and high"
    if turned:
        turn = plain("turn_under", TURN, "UMA-PATCH")
        across = figure(
            finished, "across", hole=view.measure(f"{place}.hole"), weak=view.measure(f"{place}.weak"), margin=0
        )
        margin = plain("margin", beyond(word, view.word(f"{place}.where")), "SCHOOLSEW-P")
        known |= {"cut": figure(cut, "cut", hole=across, margin=margin, turn_under=turn), "turn_under": turn}
        how = "Cut a piece {cut} wide and high, which finishes {cover} when {turn_under} is turned under all round"
    return Op(
        id=f"cut {place}.patch",
        stage="mend",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(5, 10, 15),
        says=(
            f"{how}, from {cloth}, threads and nap running as the garment's do. Round the corners; let no edge lie on "
            "a crease or at the bend of a knee."
        ),
        expects=(Put(f"{place}.patch", "none"),),
        effects=(Change(f"{place}.cover", size), Put(f"{place}.patch", "cut")),
        figures=known,
        materials=(Need(cloth, "a piece for each place"),),
    )


def close(view: View, place: str, word: str, id: str, says: str, setup: Setup, minutes: Spread) -> Op:
    """The cut piece put on: the place is closed."""
    return Op(
        id=f"{id} {place}.holes",
        stage="mend",
        verb=id,
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=(Put(f"{place}.holes", view.word(f"{place}.holes")), Put(f"{place}.patch", "cut")),
        effects=(Put(f"{place}.holes", word),),
        materials=(Need("thread to match"),) if setup not in ("iron", "table") else (),
    )


def darn_place(view: View, place: str) -> Op:
    """Weave the hole shut."""
    span = cover_of(view, place, "darned")
    return Op(
        id=f"darn {place}.holes",
        stage="mend",
        verb="darn",
        places=(place,),
        setup="straight",
        minutes=Spread(15, 25, 45),
        says=(
            "Lay thin cloth behind. With the feed down, or by hand, run rows {cover} long back and forth over the "
            "hole, begun and ended 1/2 in into sound cloth, first along the strong threads, then across. Keep them "
            "loose."
        ),
        expects=(Put(f"{place}.holes", "open"),),
        effects=(Change(f"{place}.cover", span), Put(f"{place}.holes", "darned")),
        figures={"cover": span},
        materials=(Need("thread to match"), Need("thin cloth to lay behind")),
    )


def do_over(view: View, place: str) -> Op:
    """A mend of the wrong size done over."""
    right = cover_of(view, place, view.word(f"{place}.holes"))
    key = f"{place}.cover"
    by = Figure("difference", mm_of(right) - view.mm(key), "what it must be less what it is", (right.id, key), "case")
    return Op(
        id=f"do over {key}",
        stage="finish",
        verb="do over",
        places=(place,),
        setup="unpick",
        minutes=Spread(15, 25, 40),
        says=f"Unpick the mend at {view.words(place)} and do it again, {{cover}} wide this time.",
        effects=(Change(key, by),),
        figures={"cover": right},
    )


def pin_seam(view: View, place: str) -> Op:
    """Safety pins along a burst seam."""
    return Op(
        id=f"pin {place}.burst",
        stage="mend",
        verb="pin",
        places=(place,),
        setup="hand",
        minutes=Spread(2, 4, 6),
        says=(
            "From the inside put small safety pins along the old line, 1 in apart, heads down and points away from "
            "the body, the first and last in sound stitching."
        ),
        expects=(Put(f"{place}.burst", view.word(f"{place}.burst")),),
        effects=(Put(f"{place}.burst", "pinned"),),
        materials=(Need("small safety pins"),),
    )


def cut_tape(view: View, place: str) -> Op:
    """A strip cut to carry a seam whose cloth is torn."""
    return Op(
        id=f"cut {place}.tape",
        stage="mend",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(4, 6, 10),
        says=(
            "Cut two strips of thin firm woven cloth, 1 1/2 in wide and 2 in longer than the torn part; on a curve "
            "cut them on the bias."
        ),
        expects=(Put(f"{place}.tape", "none"),),
        effects=(Put(f"{place}.tape", "cut"),),
        materials=(Need("thin firm woven cloth", "two strips, 1 1/2 in wide"),),
    )


def lay_tape(view: View, place: str) -> Op:
    """The strips sewn behind the torn edges."""
    return Op(
        id=f"lay {place}.tape",
        stage="mend",
        verb="lay",
        places=(place,),
        setup="zigzag",
        minutes=Spread(12, 20, 35),
        says=(
            "Lay a strip behind each torn edge, the frayed threads smoothed onto it, and run rows of short wide "
            "zigzag over the tear into sound cloth, stitches well apart. Trim what hangs loose."
        ),
        expects=(Put(f"{place}.tape", "cut"), Put(f"{place}.burst", "torn")),
        effects=(Put(f"{place}.tape", "sewn"),),
        materials=(Need("thread to match"),),
    )


def resew(view: View, place: str) -> Op:
    """The burst seam sewn again, twice."""
    torn = view.word(f"{place}.burst") == "torn"
    taped = (Put(f"{place}.tape", "sewn"),) if torn else ()
    return Op(
        id=f"sew {place}.burst",
        stage="mend",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(8, 12, 20),
        says=(
            "If the seam is opened for fitting below, leave it open: it is sewn twice on its new line then. Otherwise "
            "take the loose stitching out and sew the old line again, 1 in into the sound seam at both ends, with "
            "short stitches of 2 mm and strong thread, and once more on top; in a curve draw the cloth a little "
            "as you sew, so that the thread gives when she sits. Finish the edges and press."
        ),
        expects=(Put(f"{place}.burst", view.word(f"{place}.burst")), *taped),
        effects=(Put(f"{place}.burst", "sewn again"),),
        materials=(Need("strong thread"),),
    )
