"""Whole hems: the operations of each kind of hem in order, with the numbers that make them come out.

An end that is `long` too long and whose opened hem gives `turn_up` more has long + turn_up below the new edge;
what the new hem does not take is cut off. Nothing is sized here that the hem cannot hold: then there is no work.
"""

from fractions import Fraction

from advisor.core.figure import Figure, mm_of
from advisor.core.model import Mm
from advisor.core.work import Op, Setup, Spread, Work
from advisor.figures.edges import hem_kept, take_up
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.hems import cut_off_opened, false_strip
from advisor.figures.letout import inset_cut
from advisor.figures.plackets import facing_cut, strip_cut
from advisor.knowledge.fix import work_of
from advisor.knowledge.view import Trouble, View, amount
from advisor.operations.hem_bands import cut_across, cut_band, finish_band, set_band, take_cuff_off
from advisor.operations.hems import (
    SEAM,
    SLOPE_RUN,
    cut_end,
    cut_facing,
    for_each,
    mark_line,
    open_hem,
    sew_facing,
    sew_hem,
    strip_size,
    turn_of,
    turn_up,
)

NARROW_FOLD = inches("1/4")
"""Each turn of a narrow hem. Source OSU-L87."""
FACING_SEAM = inches("1/4")
"""What the seam of a facing takes, its edge rolled under: common practice, no source."""
TURN_UNDER = inches("1/2")
WIDE_DEPTH = inches("1 1/2")
"""A trouser hem of 2 in: 1/2 in under and 1 1/2 in up. Common practice, no source."""
DEEP = inches("2 1/2")
"""Hem of a rather straight skirt. Source TX-L359."""
DEEP_EASES = inches("2")
"""The most fullness a deep hem steams flat all round, whatever the cloth: common practice, no source."""
FLARED = inches("1 1/2")
"""Hem of a flared skirt. Source OSU-L87."""
CLEAN = inches("1/4")
"""What the turned edge of a clean-finished hem adds. Sources SINGER-HEM and OSU-L87."""
SINGLE = {"leg_end": inches("1 1/4"), "sleeve_end": inches("1")}
"""Depth of a hem turned once: 1 1/4 in for trousers, source ASG-HEM; 1 in at a sleeve, common practice."""
EACH_EDGE_MOST = inches("3/8")
"""What a seam of 1/2 in lets out inside a hem on each edge: common practice, no source."""


def takes(fix: str, role: str) -> Mm:
    """What the hem of a fix takes in all, mm; 0 where it takes what there is."""
    name = fix.rpartition(".")[2]
    fixed = {
        "double_fold": 2 * TURN_UNDER,
        "wide_hem": TURN_UNDER + WIDE_DEPTH,
        "single_turn": SINGLE.get(role, inches(1)),
        "face_hem": FACING_SEAM,
        "deep_hem": DEEP + CLEAN,
        "flared_hem": FLARED + CLEAN,
        "narrow_hem": 2 * NARROW_FOLD,
    }
    return fixed.get(name, Mm(0))


def depth_of(fix: str, role: str, over: Mm, old_hem: Mm) -> Mm:
    """How deep the turned-up hem of a fix lies, mm; `over` is too long (or, below 0, too short), before the work."""
    name = fix.rpartition(".")[2]
    if name in ("turn_all_up", "let_down"):
        held = over + old_hem
        return held - under_of(held)
    fixed = {
        "double_fold": TURN_UNDER,
        "wide_hem": WIDE_DEPTH,
        "single_turn": takes(fix, role),
        "deep_hem": DEEP,
        "flared_hem": FLARED,
        "narrow_hem": NARROW_FOLD,
    }
    return fixed.get(name, Mm(0))


def under_of(allowance: Mm) -> Mm:
    """What is turned under of an allowance used whole: 1/2 in, or half of a narrow one."""
    return min(TURN_UNDER, allowance / 2)


def slant(depth: Mm, at: Mm, above: Mm) -> Mm:
    """How much longer (below 0: shorter) round the turned-up edge is than the place it meets, mm."""
    return 2 * depth * (at - above) / SLOPE_RUN


def fold_up_longer(name: str, fix: str, role: str, amount: Mm, turn_up: Mm, at: Mm, above: Mm) -> Mm:
    """How much longer (below 0: shorter) round the hem of a fix is than where it lands, mm, for problem `name`."""
    return slant(depth_of(fix, role, amount if name == "too_long" else -amount, turn_up), at, above)


def fold_up_eases(name: str, fix: str, role: str, amount: Mm, turn_up: Mm, at: Mm, above: Mm, kind: str) -> Mm:
    """The most of it that cloth of `kind` eases in there, mm."""
    deep = depth_of(fix, role, amount if name == "too_long" else -amount, turn_up)
    eases = max((at - deep * (at - above) / SLOPE_RUN) * take_up(kind, most=True), Mm(0))
    return min(eases, DEEP_EASES) if fix.endswith(".deep_hem") else eases


def shorten(
    trouble: Trouble,
    view: View,
    allowance: Figure,
    depth: Figure,
    turns: dict[str, Figure],
    how: str,
    sewing: tuple[str, Setup, Spread],
) -> Work:
    """Cut and turned up: opened, marked, cut where more hangs down than the hem takes, turned, sewn."""
    place, long = trouble.place, amount(trouble, "long")
    old = view.measure(f"{place}.turn_up")
    if mm_of(long) + mm_of(old) < mm_of(allowance):
        return Work({"long": long, "allowance": allowance, "turn_up": old}, ())
    off = figure(cut_off_opened, "off", too_long=long, old_hem=old, allowance=allowance)
    strip = "the opened raw edge. Measured the other way, the cut runs {allowance} below the new edge."
    cut = (cut_end(view, place, off, strip, {"allowance": allowance}),) if mm_of(off) else ()
    return work_of(
        (
            open_hem(view, place),
            mark_line(view, place, long, "above"),
            *cut,
            turn_up(view, place, allowance, depth, how, turns, cut=bool(cut)),
            sew_hem(view, place, *sewing),
        )
    )


def turn_whole(trouble: Trouble, view: View, sewing: tuple[str, Setup, Spread]) -> Work:
    """Turned up whole, nothing cut: all that hangs below the new edge is the new hem."""
    place, by = trouble.place, amount(trouble, "by")
    old = view.measure(f"{place}.turn_up")
    if trouble.problem == "too_long":
        held = figure(cut_off_opened, "allowance", too_long=by, old_hem=old, allowance=Fraction(0))
        which = "above"
    else:
        held = figure(hem_kept, "allowance", old_hem=old, short=by)
        which = "below"
    if mm_of(held) < 2 * NARROW_FOLD:
        return Work({"allowance": held, "turn_up": old}, ())
    under = Figure("under", under_of(mm_of(held)), "1/2 in, or half of a narrow hem", ("allowance",), "common-practice")
    depth = Figure(
        "depth", mm_of(held) - mm_of(under), "what is left of the hem", ("allowance", "under"), "common-practice"
    )
    how = "Turn the raw edge under {under}, then turn up {depth}: that is all of the {allowance} below the new edge."
    return work_of(
        (
            open_hem(view, place),
            mark_line(view, place, by, which),
            turn_up(view, place, held, depth, how, {"under": under, "depth": depth}, cut=False),
            sew_hem(view, place, *sewing),
        )
    )


def face(trouble: Trouble, view: View, sewing: tuple[str, Setup, Spread]) -> Work:
    """Faced: the cloth of the hem becomes length, a strip takes its place inside."""
    place, by = trouble.place, amount(trouble, "by")
    old, seam = view.measure(f"{place}.turn_up"), turn_of("seam", "1/4", "common-practice")
    long = trouble.problem == "too_long"
    over = mm_of(by) if long else -mm_of(by)
    off = Figure(
        "off",
        over + mm_of(old) - mm_of(seam),
        "what hangs below the seam of the facing",
        ("by", old.id, "seam"),
        "common-practice",
    )
    if mm_of(off) < 0:
        return Work({"by": by, "turn_up": old, "seam": seam}, ())
    strip_long = figure(false_strip, "strip", flat_width=view.mm(f"{place}.round") / 2, seam=inches("1/2"))
    strip_wide = figure(facing_cut, "wide", finished=inches("2"), allowance=FACING_SEAM, finish=inches("1/4"))
    how = "the opened edge: {seam} stays below the new edge for the seam of the facing."
    cut = (cut_end(view, place, off, how, {"seam": seam}),) if mm_of(off) else ()
    return work_of(
        (
            cut_facing(view, place, strip_long, strip_wide, strip_size(strip_long, strip_wide, view)),
            open_hem(view, place),
            mark_line(view, place, by, "above" if long else "below"),
            *cut,
            sew_facing(view, place, seam, cut=bool(cut)),
            sew_hem(view, place, *sewing),
        )
    )


def add_band(trouble: Trouble, view: View) -> Work:
    """A band sewn on where the old hem edge was, as deep as the end is short."""
    place, short = trouble.place, amount(trouble, "short")
    old, seam = view.measure(f"{place}.turn_up"), turn_of("seam", "1/2", "common-practice")
    spared = min(mm_of(old), SEAM)
    off = Figure(
        "off", mm_of(old) - spared, "what hangs below the seam of the band", (old.id, "seam"), "common-practice"
    )
    deep = Figure(
        "deep",
        mm_of(short) + SEAM - spared,
        "what is short, and what the seam takes of the length",
        ("short", "seam"),
        "common-practice",
    )
    wide = figure(strip_cut, "wide", overlap=deep, allowance=SEAM)
    long = figure(inset_cut, "long", wanting=view.measure(f"{place}.round"), insets=1, allowance=SEAM)
    says = (
        f"{for_each(view, place)} a band {{long}} long and {{wide}} wide: folded along its middle it shows {{deep}}, "
        "with 1/2 in allowed all round."
    )
    how = "the opened edge: {seam} stays below the old crease for the seam of the band."
    cut = (cut_end(view, place, off, how, {"seam": seam}, after="open"),) if mm_of(off) else ()
    gain = Figure("gain", mm_of(deep) - SEAM, "what the band shows less the seam", ("deep", "seam"), "common-practice")
    ops: tuple[Op, ...] = (
        cut_band(view, place, {"long": long, "wide": wide, "deep": deep}, says, strip_size(long, wide, view)),
        open_hem(view, place),
        *cut,
        set_band(
            view,
            place,
            gain,
            "raw" if cut else "open",
            "Join each band into a ring that fits the end, press its fold, and sew one edge to the end, right sides "
            "together, with a seam of {seam}. Below it the band shows {deep}. Try on.",
            {"seam": seam, "deep": deep},
        ),
        finish_band(view, place, "Turn the other edge of each band in over the seam and sew it down. Press."),
    )
    return work_of(ops)


def insert_band(trouble: Trouble, view: View) -> Work:
    """A band between the end and its cuff, or across the leg or sleeve above an edge that is kept."""
    place, short = trouble.place, amount(trouble, "short")
    cuff = view.word(f"{place}.finish") == "cuff"
    lost = Mm(0) if cuff else 2 * SEAM
    deep = Figure(
        "deep", mm_of(short) + lost, "what is short, and the two seams cut into", ("short",), "common-practice"
    )
    wide = figure(inset_cut, "wide", wanting=deep, insets=1, allowance=SEAM)
    long = figure(inset_cut, "long", wanting=view.measure(f"{place}.round_above"), insets=1, allowance=SEAM)
    says = (
        f"{for_each(view, place)} a band {{long}} long and {{wide}} wide: set in it shows {{deep}}, with 1/2 in "
        "allowed all round."
    )
    above = Figure(
        "above",
        view.mm(f"{place}.turn_up") + inches("1"),
        "the old hem and 1 in",
        (f"{place}.turn_up",),
        "common-practice",
    )
    opened = take_cuff_off(view, place) if cuff else cut_across(view, place, above)
    rest = "cuff" if cuff else "cut-off end"
    # A cuff has a slit above it, and the band must stay open there too.
    ends = "Face the ends of each band, keep them open in line with the slit," if cuff else "Join each band into a ring"
    return work_of(
        (
            cut_band(view, place, {"long": long, "wide": wide, "deep": deep}, says, strip_size(long, wide, view)),
            opened,
            set_band(
                view,
                place,
                short,
                "open" if cuff else "raw",
                f"{ends} and sew it to the upper edge, seams in line, 1/2 in. It is to show {{deep}}.",
                {"deep": deep},
            ),
            finish_band(
                view,
                place,
                f"Sew the {rest} to the lower edge of each band, 1/2 in, left to left. Press both seams to the band.",
            ),
        )
    )
