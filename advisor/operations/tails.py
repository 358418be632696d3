"""The lower edge of a shirt or blouse: shortened, let down, lengthened, made level.

The law: the edge is as long as its cloth less what is turned up. Opening the hem lets the turn-up hang down, cutting
takes the strip off, turning takes the allowance up. A strip cut to level takes off what hung too low.
"""

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.edges import hem_kept
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.hems import cut_off_opened, double_fold, two_turns
from advisor.figures.plackets import facing_cut
from advisor.figures.trunk import DOMESTIC_ALLOWANCE
from advisor.knowledge.view import View, plain

NARROW = inches("1/4")
"""Each turn of a narrow hem. Source OSU-L87."""
UNDER = inches("1/4")
"""Turned under in a wider hem. Source OSU-L87."""
WIDE = inches("1/2")
"""Depth of a wider hem: shirts 3/8 to 5/8 in, blouses worn outside 3/8 to 3/4 in. Source ASG-HEM."""
CHECK = "it has been washed as it will be washed from now on, and the line was tried on, arms lifted, belt on"


def narrow_allowance() -> Figure:
    """What a narrow hem takes: two turns."""
    return figure(double_fold, "allowance", fold=plain("fold", NARROW, "OSU-L87"))


def wide_allowance() -> Figure:
    """What a wider hem takes: under and up."""
    return figure(two_turns, "allowance", under=plain("under", UNDER, "OSU-L87"), depth=plain("depth", WIDE, "ASG-HEM"))


def holds(amount: Figure, turn_up: Figure, allowance: Figure) -> bool:
    """Whether there is cloth enough below the new edge for the new hem."""
    return mm_of(amount) + mm_of(turn_up) >= mm_of(allowance)


def open_hem(view: View, place: str) -> Op:
    """The hem unpicked and pressed flat."""
    down = view.measure(f"{place}.turn_up")
    return Op(
        id=f"open {place}.hem",
        stage="hem",
        verb="unpick",
        places=(place,),
        setup="unpick",
        minutes=Spread(12, 20, 35),
        says=(
            f"Unpick the hem of {view.words(place)} and press it flat: {{turn_up}} comes down. Let the old edge show "
            "as a crease; it is what the new line is measured from."
        ),
        expects=(Put(f"{place}.hem", "sewn"),),
        effects=(Change(f"{place}.length", down), Put(f"{place}.hem", "open")),
        figures={"turn_up": down},
        materials=(Need("seam ripper"),),
    )


def mark_edge(view: View, place: str, says: str, figures: dict[str, Figure]) -> Op:
    """The new edge marked, on the body or on the table."""
    return Op(
        id=f"mark {place}.hem",
        stage="hem",
        verb="mark",
        places=(place,),
        setup="body",
        minutes=Spread(8, 12, 20),
        says=says,
        expects=(Put(f"{place}.hem", "open"),),
        effects=(Put(f"{place}.hem", "marked"),),
        try_on=True,
        figures=figures,
        materials=(Need("marking chalk"),),
    )


def shorten(
    view: View, place: str, long: Figure, allowance: Figure, how: str, turns: dict[str, Figure]
) -> tuple[Op, ...]:
    """Opened, marked, cut, turned and sewn: shorter by `long`."""
    turn_up = view.measure(f"{place}.turn_up")
    off = figure(cut_off_opened, "off", too_long=long, old_hem=turn_up, allowance=allowance)
    says = "Mark the new edge {long} above the old one, all round and in the same curve. Check front to front."
    cut = _cut(
        view,
        place,
        "Cut {off} off the opened edge all round: {allowance} stays below the new edge.",
        {"off": off, "allowance": allowance},
        (Change(f"{place}.length", times(off, -1, "cut off")),),
    )
    state = "raw" if mm_of(off) else "marked"
    return (
        open_hem(view, place),
        mark_edge(view, place, says, {"long": long}),
        *((cut,) if mm_of(off) else ()),
        turn(view, place, allowance, how, turns, state),
        sew_hem(view, place),
    )


def let_down(view: View, place: str, short: Figure) -> tuple[Op, ...]:
    """Opened and turned up again lower, what is left making a narrow hem."""
    kept = figure(hem_kept, "allowance", old_hem=view.measure(f"{place}.turn_up"), short=short)
    half = Figure("fold", mm_of(kept) / 2, "half of what is left", ("allowance",), "common-practice")
    return (
        open_hem(view, place),
        mark_edge(view, place, "Mark the new edge {short} below the old crease, all round.", {"short": short}),
        turn(view, place, kept, "Turn up {fold}, then {fold} again.", {"fold": half}, "marked"),
        sew_hem(view, place),
    )


def add_band(view: View, place: str, short: Figure) -> tuple[Op, ...]:
    """A band sewn below the old crease, as deep as the edge is short, hemmed narrowly."""
    seam = plain("seam", DOMESTIC_ALLOWANCE, "common-practice")
    hem = narrow_allowance()
    turn_up = view.measure(f"{place}.turn_up")
    wide = figure(facing_cut, "wide", finished=short, allowance=seam, finish=hem)
    cut = Op(
        id=f"cut {place}.strip",
        stage="hem",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            "Cut a band {wide} wide, in the curve of the edge and as long as it, and {seam} more at both ends: {short} "
            "shows, {seam} is for the seam and {hem} for the hem. Hem its ends first, in line with the front edges."
        ),
        expects=(Put(f"{place}.strip", "none"),),
        effects=(Put(f"{place}.strip", "cut"),),
        reversible=False,
        check_before="the cloth has been washed like the garment",
        figures={"wide": wide, "short": short, "seam": seam, "hem": hem},
        materials=(Need("cloth of like weight for a band, washed"),),
    )
    sew = Op(
        id=f"set band {place}.hem",
        stage="hem",
        verb="set",
        places=(place,),
        setup="straight",
        minutes=Spread(20, 30, 45),
        says=(
            "Sew the band on along the old crease, right sides together, and trim what lies below the seam to {seam}. "
            "Press it down, finish the seam."
        ),
        expects=(Put(f"{place}.hem", "open"), Put(f"{place}.strip", "cut")),
        effects=(
            Change(f"{place}.length", times(turn_up, -1, "the turn-up goes into the seam")),
            Change(f"{place}.length", short),
            Change(f"{place}.length", hem),
            Put(f"{place}.hem", "raw"),
        ),
        figures={"seam": seam},
        materials=(Need("thread to match"),),
    )
    fold = plain("fold", NARROW, "OSU-L87")
    return (
        cut,
        open_hem(view, place),
        sew,
        turn(view, place, hem, "Turn up {fold}, then {fold} again.", {"fold": fold}, "raw"),
        sew_hem(view, place),
    )


def level(view: View, place: str, uneven: Figure) -> tuple[Op, ...]:
    """Opened, leveled, turned up as much as before."""
    turn_up = view.measure(f"{place}.turn_up")
    mark = mark_edge(
        view, place,
        "Button it and hang it so that the front edges are plumb, or wear it. Mark the edge level from floor or table, "
        "by its highest point: {uneven} hangs too low at the lowest.",
        {"uneven": uneven},
    )  # fmt: skip
    cut = _cut(
        view, place,
        "Cut along the marks, as much below them as was turned up: {uneven} at the lowest, nothing at the highest.",
        {"uneven": uneven}, (Change(f"{place}.uneven_by", times(uneven, -1, "leveled")),),
    )  # fmt: skip
    how = "Turn up what was turned up before, in the old folds."
    return open_hem(view, place), mark, cut, turn(view, place, turn_up, how, {}, "raw"), sew_hem(view, place)


def turn(view: View, place: str, allowance: Figure, how: str, figures: dict[str, Figure], state: str) -> Op:
    """The allowance turned up."""
    curved = view.word(f"{place}.shape") == "curved"
    eased = " Round the curves run an ease row 1/8 in from the edge first and draw it up." if curved else ""
    return Op(
        id=f"turn {place}.hem",
        stage="hem",
        verb="turn",
        places=(place,),
        setup="iron",
        minutes=Spread(15, 20, 35),
        says=f"{how}{eased} Press and pin; the front edges must come out equally long.",
        expects=(Put(f"{place}.hem", state),),
        effects=(Change(f"{place}.length", times(allowance, -1, "turned up")), Put(f"{place}.hem", "turned")),
        figures={"allowance": allowance, **figures},
    )


def sew_hem(view: View, place: str) -> Op:
    """The turned hem sewn."""
    return Op(
        id=f"sew {place}.hem",
        stage="hem",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(10, 15, 25),
        says="Edgestitch the upper fold from front edge to front edge, seams first pressed open inside. Press last.",
        expects=(Put(f"{place}.hem", "turned"),),
        effects=(Put(f"{place}.hem", "sewn"),),
        materials=(Need("thread to match"),),
    )


def _cut(view: View, place: str, says: str, figures: dict[str, Figure], effects: tuple[Change, ...]) -> Op:
    return Op(
        id=f"cut {place}.hem",
        stage="hem",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(6, 10, 15),
        says=says,
        expects=(Put(f"{place}.hem", "marked"),),
        effects=(*effects, Put(f"{place}.hem", "raw")),
        reversible=False,
        check_before=CHECK,
        figures=figures,
    )
