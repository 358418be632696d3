"""Making two edges agree that are sewn together at a waist: the upper is drawn up, folded or taken in.

The laws: what is gathered, eased, pleated or darted out of an edge is gone from that edge and from nothing
else; a pleat or dart of depth d takes 2 d; a side seam moved by d on each layer takes 2 d.
"""

from collections.abc import Mapping

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Setup, Spread
from advisor.figures.darts import LONGEST, from_center, most_each, needed
from advisor.figures.edges import DART_WORD, zone
from advisor.figures.exact import inches
from advisor.figures.formula import figure, figures
from advisor.figures.gathers import quarter, rows_at, zone_fullness
from advisor.figures.pleats import hidden_room
from advisor.figures.pleats import needed as pleats_needed
from advisor.figures.seams import each
from advisor.figures.trunk import DOMESTIC_ALLOWANCE
from advisor.knowledge.view import View
from advisor.operations.shares import Shares, folded, shared
from advisor.operations.waist import open_waist, press_waist, sew_waist

PLEAT_DEEPEST = inches("3/4")
"""Past this a pleat at a waist is split in two: common practice, no source."""
FOUR = ("the left front", "the left back", "the right back", "the right front")
BACK = ("the left back", "the right back")


def at_waist(view: View, place: str, *ops: Op) -> tuple[Op, ...]:
    """`ops` on the upper edge, with the waist seam opened before them and sewn and pressed after."""
    return (open_waist(view), mark_quarters(view, place), *ops, sew_waist(view), press_waist(view))


def quarters(view: View, place: str) -> tuple[str, ...]:
    """The quarters of the edge in which the spare width lies."""
    return BACK if view.word(f"{place}.spare_at") == "back" else FOUR


def mark_quarters(view: View, place: str) -> Op:
    """Marks both edges where they must meet."""
    return Op(
        id=f"mark {place}.quarters",
        stage="join",
        verb="mark",
        places=(place,),
        setup="table",
        minutes=Spread(4, 6, 10),
        says=(
            f"Mark center front, side seams and center back on {view.words(place)} and on the edge it is sewn to, "
            "with a thread or a notch in the allowance. The two edges meet at these marks whatever lies between: "
            "measure what stands over in each quarter, and where it is not the share told below "
            "go by what you measured."
        ),
        expects=(Put(f"{place}.quarters", "none"),),
        effects=(Put(f"{place}.quarters", "marked"),),
    )


def run_rows(view: View, place: str) -> Op:
    """Two rows of gathering stitches: one on the seam line, one nearer the raw edge."""
    on_line, inside = figures(rows_at, "row", allowance=DOMESTIC_ALLOWANCE, rows=2)
    stitch = "10 to 12 stitches to the inch (2 to 2.5 mm)" if _light(view) else "4 mm stitches (about 6 to the inch)"
    return on_edge(
        view,
        place,
        id=f"run {place}.rows",
        verb="run",
        setup="straight",
        minutes=Spread(8, 12, 20),
        says=(
            f"Loosen the tension and run two rows of {stitch} across the parts to be gathered, {{on_line}} and "
            "{inside} from the raw edge: the first lies on the seam line. Sources differ: some keep both rows "
            "inside the allowance, some straddle the line and pull the outer row out. Stop and start again at every "
            "seam."
        ),
        expects=(Put(f"{place}.rows", "none"),),
        effects=(Put(f"{place}.rows", "run"),),
        figures={"on_line": on_line, "inside": inside},
    )


def _light(view: View) -> bool:
    return view.has("cloth") and view.word(f"{view.one('cloth')}.weight") == "light"


def draw_up(view: View, place: str, excess: Figure) -> Op:
    """The rows pulled until the edge is as long as the other."""
    names = quarters(view, place)
    parts = shared("part", excess, names, "from", f"each of the {len(names)} quarters", view.tape)
    over = figure(zone, "zone", part=parts.largest, room=view.measure(f"{place}.zone"))
    full = figure(zone_fullness, "fullness", excess=parts.largest, zone=over)
    whole = figure(zone_fullness, "over_quarter", excess=parts.largest, zone=_finished_quarter(view, place, excess))
    return on_edge(
        view,
        place,
        id=f"draw up {place}.edge",
        verb="draw up",
        setup="hand",
        minutes=Spread(10, 18, 30),
        says=(
            f"Pin the edges together at the marks. Pull the bobbin threads and draw out {parts.words}, spread evenly "
            "over the middle {zone} of the quarter: there the cloth is {fullness} times as full, though over "
            "the whole quarter it is only {over_quarter} times. Pin every 1/2 in, stroke the folds upright, and "
            "sew with the gathers up. Pull out any row that shows afterward."
        ),
        expects=(Put(f"{place}.rows", "run"), Put(f"{place}.fold", "flat")),
        effects=(
            Change(f"{place}.edge", times(excess, -1, "drawn_up")),
            Put(f"{place}.fold", "gathered"),
            Put(f"{place}.rows", "drawn"),
        ),
        figures={**parts.figures, "zone": over, "fullness": full, "over_quarter": whole},
    )


def _finished_quarter(view: View, place: str, excess: Figure) -> Figure:
    """A quarter of the edge as it will be when it fits."""
    fits = Figure(
        "fits",
        view.mm(f"{place}.edge") - mm_of(excess),
        "edge less excess",
        (f"{place}.edge", excess.id),
        "common-practice",
    )
    return figure(quarter, "quarter", round=fits)


def ease_edge(view: View, place: str, excess: Figure) -> Op:
    """One row of ease stitching, and the fullness shrunk into it."""
    names = quarters(view, place)
    parts = shared("part", excess, names, "into", f"each of the {len(names)} quarters", view.tape)
    return on_edge(
        view,
        place,
        id=f"ease {place}.edge",
        verb="ease",
        setup="straight",
        minutes=Spread(12, 18, 30),
        says=(
            "Run one row of stitches 2.5 to 3 mm long (8 to 10 to the inch) just inside the seam line. Pin the edges "
            f"together at the marks and ease {parts.words}, drawing the row up a little and spreading it until no fold "
            "is left. Steam it over a curved pad, where the label allows that, before it is sewn, the eased side down."
        ),
        expects=(Put(f"{place}.fold", "flat"),),
        effects=(Change(f"{place}.edge", times(excess, -1, "eased_in")), Put(f"{place}.fold", "eased")),
        figures=parts.figures,
    )


def pleat_edge(view: View, place: str, excess: Figure) -> Op:
    """Pleats, as many in every quarter, left and right alike."""
    names = quarters(view, place)
    part = figure(each, "part", total=excess, seams=len(names))
    count = figure(pleats_needed, "in_a_quarter", excess=part, most_depth=PLEAT_DEEPEST)
    folds = folded(excess, _a_side(names, count), _counted(names), view.tape)
    apart = _spacing(view, place, excess, count)
    room = figure(hidden_room, "hidden_room", spacing=apart, underfold=folds.deepest)
    pleats = Figure("pleats", folds.count, "left and right alike", ("in_a_quarter",), "common-practice", "count")
    return on_edge(
        view,
        place,
        id=f"pleat {place}.edge",
        verb="pleat",
        setup="hand",
        minutes=Spread(20, 30, 45),
        says=(
            f"Fold {{pleats}} pleats, left and right alike: {folds.words}. Pin the edges together at the marks "
            f"first. In each quarter {_where(count)}{_rest(folds)} Fold all of them toward the side seams, press the "
            "top 1 in, and baste across them."
        ),
        expects=(Put(f"{place}.fold", "flat"),),
        effects=(Change(f"{place}.edge", times(excess, -1, "pleated_out")), Put(f"{place}.fold", "pleated")),
        figures={**folds.figures, "pleats": pleats, "apart": apart, "hidden_room": room},
    )


def _a_side(names: tuple[str, ...], in_a_quarter: Figure) -> int:
    assert isinstance(in_a_quarter.value, int)
    return in_a_quarter.value * len(names) // 2


def _counted(names: tuple[str, ...]) -> str:
    return "from center front to center back" if names == FOUR else "from the side seam to center back"


def _spacing(view: View, place: str, excess: Figure, in_a_quarter: Figure) -> Figure:
    """From the middle of one fold to the next, on the finished edge."""
    assert isinstance(in_a_quarter.value, int)
    return figure(each, "apart", total=_finished_quarter(view, place, excess), seams=in_a_quarter.value)


def _where(in_a_quarter: Figure) -> str:
    if in_a_quarter.value == 1:
        return "one pleat stands in the middle."
    return "their middles stand {apart} apart, the outer ones half of that from the marks."


def _rest(folds: Shares) -> str:
    return " Ease in the last {rest}, which the tape cannot share out." if folds.rest else ""


def dart_edge(view: View, place: str, excess: Figure) -> Op:
    """Darts that open on the waist edge, pressed toward the center."""
    names = quarters(view, place)
    room = view.measure(f"{place}.dart_room")
    most = figure(most_each, "most_each", length=room, cloth=_dart_cloth(view))
    part = figure(each, "part", total=excess, seams=len(names))
    count = figure(needed, "in_a_quarter", total=part, most_each=most)
    folds = folded(excess, _a_side(names, count), _counted(names), view.tape)
    darts = Figure("darts", folds.count, "left and right alike", ("in_a_quarter",), "common-practice", "count")
    length = Figure("dart_length", min(mm_of(room), LONGEST), "the room there is, at most 7 in", (room.id,), "TIE3-32")
    assert isinstance(count.value, int)
    places = figures(from_center, "from_center", quarter=view.mm(f"{place}.edge") / 4, pairs=count.value)
    stands = {f"stands_{number}": at for number, at in enumerate(places, start=1)}
    return on_edge(
        view,
        place,
        id=f"dart {place}.edge",
        verb="dart",
        setup="straight",
        minutes=Spread(30, 45, 70),
        says=(
            f"Sew {{darts}} darts, {{dart_length}} long, from the edge to the point: {folds.words}. In each quarter "
            f"the middles stand {' and '.join(f'{{{name}}}' for name in stands)} from the center line.{_rest(folds)} "
            "The last stitches run on the fold; knot the threads. Press them toward the center before the waist is "
            "sewn."
        ),
        expects=(Put(f"{place}.fold", "flat"),),
        effects=(
            Change(f"{place}.edge", times(excess, -1, "darted_out")),
            Put(f"{place}.fold", "darted"),
            Put(f"{place}.press", "due"),
        ),
        figures={**folds.figures, **stands, "darts": darts, "dart_length": length, "most_each": most},
        try_on=True,
    )


def _dart_cloth(view: View) -> str:
    return DART_WORD.get(view.word(f"{view.one('cloth')}.kind"), "crisp") if view.has("cloth") else "other"


def take_in_sides(view: View, place: str, excess: Figure) -> Op:
    """Both side seams above the waist, running out to nothing upward."""
    names = quarters(view, place)
    layers = "each of the four layers" if names == FOUR else "the back layer of each, the front staying as it is"
    parts = shared("layer", excess, names, "at", layers, view.tape)
    per_seam = figure(each, "per_seam", total=excess, seams=2)
    return on_edge(
        view,
        place,
        id=f"take in {place}.sides",
        verb="take in",
        setup="straight",
        minutes=Spread(20, 30, 50),
        says=(
            f"At the waist move the line of the side seams in by {parts.words}: {{per_seam}} to a seam. Draw it out "
            "to nothing at the armhole in a long flat curve, baste, try on, lift both arms. Sew, then take out the "
            "old line; trim only after a day of wear."
        ),
        expects=(Put(f"{place}.fold", "flat"),),
        effects=(
            Change(f"{place}.edge", times(excess, -1, "taken_in")),
            Put(f"{place}.fold", "taken in"),
            Put(f"{place}.press", "due"),
        ),
        figures={**parts.figures, "per_seam": per_seam},
        try_on=True,
    )


def press_upper(view: View, place: str) -> Op:
    """The new seams above the waist pressed before the waist seam crosses them."""
    return Op(
        id=f"press {place}.press",
        stage="join",
        verb="press",
        places=(place,),
        setup="iron",
        minutes=Spread(4, 6, 10),
        says=(
            f"Press the new seams of {view.words(place)} before the waist is sewn across them: flat as sewn, then to "
            "one side."
        ),
        expects=(Put(f"{place}.press", "due"), Put(waist_of(view), "open")),
        effects=(Put(f"{place}.press", "done"),),
    )


def waist_of(view: View) -> str:
    """The state that says whether the waist seam is open."""
    return f"{view.one('waist_seam')}.seam"


def on_edge(
    view: View,
    place: str,
    *,
    id: str,
    verb: str,
    setup: Setup,
    minutes: Spread,
    says: str,
    expects: tuple[Put, ...],
    effects: tuple[Change | Put, ...],
    figures: Mapping[str, Figure],
    try_on: bool = False,
) -> Op:
    """Work on the open edge, once both edges carry their marks."""
    return Op(
        id=id,
        stage="join",
        verb=verb,
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=(Put(waist_of(view), "open"), Put(f"{place}.quarters", "marked"), *expects),
        effects=effects,
        try_on=try_on,
        figures=figures,
        materials=(Need("thread to match"),),
    )
