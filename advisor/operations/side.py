"""Side openings: sewn up, shortened, fastened, backed with a strip, taped, or given room beside them.

The law: what stands open is what the edges lie apart at the widest. Closing takes it away, cloth let out or set in
beside the opening takes it away too, and a strip behind lets it stand open without harm. Both sides are done alike.
"""

from collections.abc import Mapping

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.stages import Stage
from advisor.core.work import Need, Op, Setup, Spread
from advisor.figures.edges import fastenings
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.figures.plackets import strip_cut, strip_length
from advisor.figures.seams import each_side, shortest_run_out
from advisor.knowledge.view import View
from advisor.lengths import on_tape, show
from advisor.operations.shares import shared

LAP = inches("1")
"""How far a strip behind an opening reaches under the far edge: common practice, no source."""
SEAM = inches("1/2")
"""Seam allowance of a strip: common practice, no source."""


def mark_fastenings(view: View, place: str, length: Figure) -> Op:
    """Where the fastenings go, told off from the upper end. `length` is the stretch that stays open."""
    count = figure(fastenings, "fastenings", length=length)
    assert isinstance(count.value, int)
    at = {
        f"at_{number}": Figure(
            f"at_{number}",
            on_tape(mm_of(length) * number / (count.value + 1), view.tape),
            "the open length in equal parts, to the nearest mark",
            (length.id, "fastenings"),
            "common-practice",
        )
        for number in range(1, count.value + 1)
    }
    told = " and ".join(f"{{{name}}}" for name in at)
    return _op(
        place,
        f"mark {place}.mark",
        "closure",
        "mark",
        "table",
        Spread(3, 5, 10),
        f"At each side mark both edges {told} below the upper end of the open part, so that no bare stretch is over "
        "4 in. Move a mark to the widest place if it lies within 1 in of it.",
        (Put(f"{place}.mark", "none"),),
        (Put(f"{place}.mark", "marked"),),
        figures={"fastenings": count, **at},
    )


def fasten(
    view: View, place: str, gape: Figure, *, what: str, how: str, minutes: Spread, need: str, after: str = "open"
) -> Op:
    """Fastenings of the kind `what` at the marks; they hold together what stood `gape` apart."""
    return _op(
        place,
        f"fasten {place}.seam with {what}",
        "closure",
        "sew",
        "hand",
        minutes,
        f"Back each place with a scrap of firm cloth. {how} Sew through the allowance and the backing, and let "
        "nothing show outside. Close it and sit down: it must hold without dragging.",
        (Put(f"{place}.mark", "marked"), Put(f"{place}.seam", after)),
        (Change(f"{place}.gape", times(gape, -1, "closed")), Put(f"{place}.seam", "fastened")),
        figures={},
        needs=(Need(need), Need("thread to match")),
        try_on=True,
    )


def sew_shut(view: View, place: str, gape: Figure) -> Op:
    """The opening sewn up over its whole length, as part of the side seam."""
    return _op(
        place,
        f"sew {place}.seam",
        "closure",
        "sew",
        "straight",
        Spread(12, 18, 30),
        f"Unpick the finish of {view.words(place)} as far as the seam line. Pin the edges together and try on: "
        "nothing may pull. Sew the side seam through, from the sound seam above to the sound seam below, and take "
        "out any pocket or facing left inside.",
        (Put(f"{place}.seam", "open"),),
        (
            Change(f"{place}.gape", times(gape, -1, "closed")),
            Put(f"{place}.seam", "sewn"),
            Put(f"{place}.press", "due"),
        ),
        figures={},
        needs=(Need("thread to match"),),
        try_on=True,
    )


def sew_half(view: View, place: str, half: Figure, half_length: Figure) -> Op:
    """The opening sewn up over half its length: what stays open is half as long and stands half as wide."""
    return _op(
        place,
        f"sew half {place}.seam",
        "closure",
        "sew",
        "straight",
        Spread(10, 15, 25),
        "Sew the opening up over {half_length} from the end she can spare, as part of the side seam, and bar-tack "
        "where it now ends. Half as long, it stands open half as wide: {half}.",
        (Put(f"{place}.seam", "open"),),
        (
            Change(f"{place}.gape", times(half, -1, "closed_half")),
            Put(f"{place}.seam", "part"),
            Put(f"{place}.press", "due"),
        ),
        figures={"half": half, "half_length": half_length},
        needs=(Need("thread to match"),),
        try_on=True,
    )


def cut_underlap(view: View, place: str, gape: Figure) -> Op:
    """Two strips to lie behind the openings."""
    reach = Figure(
        "reach", mm_of(gape) + LAP, "the widest gap and 1 in under the far edge", (gape.id,), "common-practice"
    )
    wide = figure(strip_cut, "wide", overlap=reach, allowance=SEAM)
    long = figure(strip_length, "long", opening=view.measure(f"{place}.length"), top=SEAM, bottom=SEAM)
    return _cut(
        view,
        place,
        {"reach": reach, "wide": wide, "long": long},
        "Cut two strips, {wide} wide and {long} long. Folded along the middle and sewn in by both raw edges at "
        "once they are {reach} wide: the widest gap and 1 in to lie under the far edge.",
    )


def sew_underlap(view: View, place: str, gape: Figure) -> Op:
    """The strip sewn to the back edge only: the opening may stand open, and nothing shows."""
    return _op(
        place,
        f"back {place}.strip",
        "closure",
        "sew",
        "straight",
        Spread(20, 30, 45),
        "Fold each strip along its middle, close its ends, and sew its raw edges behind the back edge of the "
        "opening. It lies flat under the front edge; tack it there at the lower end, never along the edge.",
        (Put(f"{place}.strip", "cut"),),
        (
            Change(f"{place}.want", times(gape, 1, "allowed")),
            Put(f"{place}.strip", "set"),
            Put(f"{place}.press", "due"),
        ),
        figures={},
        needs=(Need("thread to match"),),
        try_on=True,
    )


def tape_edges(view: View, place: str, gape: Figure) -> Op:
    """Both stretched edges drawn in to a stay tape."""
    length = view.measure(f"{place}.length")
    return _op(
        place,
        f"tape {place}.seam",
        "closure",
        "tape",
        "straight",
        Spread(20, 30, 50),
        "Measure the opening straight from end to end, {length}, and not along its wavy edges. Shrink the tape, "
        "cut four pieces that long with 1/2 in more at each end, pin one along each edge with the fullness spread "
        "even, and stitch with the tape on top. Steam the edge flat, where the label allows it.",
        (Put(f"{place}.seam", "open"),),
        (
            Change(f"{place}.gape", times(gape, -1, "drawn_in")),
            Put(f"{place}.seam", "taped"),
            Put(f"{place}.press", "due"),
        ),
        figures={"length": length},
        needs=(Need("narrow stay tape, not stretchy", f"4 pieces, {show(mm_of(length) + 2 * SEAM, view.tape)} each"),),
        try_on=True,
    )


def open_beside(view: View, place: str) -> Op:
    """The side seams unpicked above and below the opening."""
    return _op(
        place,
        f"open {place}.beside",
        "open",
        "unpick",
        "unpick",
        Spread(12, 20, 35),
        f"Unpick the side seams above and below {view.words(place)} as far as the strain reaches, and the finish of "
        "the opening with them. Unpick 2 in first, steam if allowed, look in daylight: a line left then will stay.",
        (Put(f"{place}.beside", "sewn"),),
        (Put(f"{place}.beside", "open"),),
        figures={},
        needs=(Need("seam ripper"),),
    )


def sew_beside(view: View, place: str, gape: Figure) -> Op:
    """Both side seams sewn further out beside the openings."""
    parts = shared("layer", gape, ("the front", "the back"), "on", "front and back alike", view.tape)
    run = figure(shortest_run_out, "run", each_side=parts.largest)
    return _op(
        place,
        f"let out {place}.beside",
        "closure",
        "let out",
        "straight",
        Spread(25, 40, 60),
        f"Sew both side seams again further out, {parts.words}, which gives {{gape}} at each side; run into the old "
        "line over {run} or more, above and below. Baste, try on, sit down. Then finish the opening again as it "
        "was.",
        (Put(f"{place}.beside", "open"),),
        _given(place, gape),
        figures={**parts.figures, "gape": gape, "run": run},
        needs=(Need("thread to match"),),
        try_on=True,
    )


def cut_side_strips(view: View, place: str, gape: Figure) -> Op:
    """Two strips to widen the sides, tapering out above and below the openings."""
    run = figure(shortest_run_out, "run", each_side=figure(each_side, "layer", total=gape))
    wide = figure(inset_cut, "wide", wanting=gape, insets=1, allowance=SEAM)
    long = figure(strip_length, "long", opening=view.measure(f"{place}.length"), top=run, bottom=run)
    return _cut(
        view,
        place,
        {"gape": gape, "wide": wide, "long": long, "run": run},
        "Cut two strips, {wide} wide and {long} long: finished {gape} wide along the opening and running to "
        "nothing over {run} at each end. Threads and nap run as the garment's do.",
    )


def set_side_strips(view: View, place: str, gape: Figure) -> Op:
    """The strips set into the side seams, behind the openings."""
    return _op(
        place,
        f"set {place}.beside",
        "closure",
        "set",
        "straight",
        Spread(40, 60, 90),
        "Set a strip into each side seam, sewn to the back on its whole length and to the front above and below the "
        "opening, whose edge it now continues. Baste, try on, sit down. Then finish the opening again as it was.",
        (Put(f"{place}.strip", "cut"), Put(f"{place}.beside", "open")),
        (*_given(place, gape), Put(f"{place}.strip", "set")),
        figures={},
        needs=(Need("thread to match"),),
        try_on=True,
    )


def ease_closing(view: View, place: str, over: Figure) -> Op:
    """A closing that draws the edges too far together, set again."""
    return _op(
        place,
        f"set again {place}.seam",
        "finish",
        "set",
        "hand",
        Spread(8, 12, 20),
        "Unpick the closing and set it again {over} wider, so that the edges meet and do not pull.",
        (),
        (Change(f"{place}.gape", over),),
        figures={"over": over},
        needs=(Need("thread to match"),),
        try_on=True,
    )


def press_side(view: View, place: str) -> Op:
    """The new seams at the openings pressed."""
    return _op(
        place,
        f"press {place}.press",
        "closure",
        "press",
        "iron",
        Spread(4, 6, 10),
        f"Press {view.words(place)} flat as sewn, then from the wrong side over a curved pad.",
        (Put(f"{place}.press", "due"),),
        (Put(f"{place}.press", "done"),),
        figures={},
    )


def half_of(view: View, place: str) -> Figure:
    """Half the length of the opening."""
    return figure(each_side, "half_length", total=view.measure(f"{place}.length"))


def _given(place: str, gape: Figure) -> tuple[Change | Put, ...]:
    return (
        Change(f"{place}.gape", times(gape, -1, "given")),
        Put(f"{place}.beside", "sewn"),
        Put(f"{place}.press", "due"),
    )


def _cut(view: View, place: str, figures: dict[str, Figure], says: str) -> Op:
    size = f"{show(mm_of(figures['long']), view.tape)} by {show(mm_of(figures['wide']), view.tape)}"
    return _op(
        place,
        f"cut {place}.strip",
        "closure",
        "cut",
        "table",
        Spread(5, 10, 15),
        says,
        (Put(f"{place}.strip", "none"),),
        (Put(f"{place}.strip", "cut"),),
        figures=figures,
        needs=(Need("matching cloth", f"2 strips {size}"),),
        check="the cloth has been washed like the garment",
    )


def _op(
    place: str,
    id: str,
    stage: Stage,
    verb: str,
    setup: Setup,
    minutes: Spread,
    says: str,
    expects: tuple[Put, ...],
    effects: tuple[Change | Put, ...],
    *,
    figures: Mapping[str, Figure],
    needs: tuple[Need, ...] = (),
    try_on: bool = False,
    check: str = "",
) -> Op:
    """Work at both openings."""
    return Op(
        id=id,
        stage=stage,
        verb=verb,
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=expects,
        effects=effects,
        reversible=not check,
        check_before=check,
        try_on=try_on,
        figures=figures,
        materials=needs,
    )
