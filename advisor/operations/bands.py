"""A band of its own at the waist: opened, shortened, pieced or made new, and sewn on again.

The laws: a seam across a band takes what is sewn into it; a band loses or gains exactly what the edge it
finishes lost or gained; the lap at the closing stays.
"""

from dataclasses import replace

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.figures.plackets import strip_cut
from advisor.figures.seams import each_side
from advisor.figures.trunk import DOMESTIC_ALLOWANCE
from advisor.figures.waist import band_cut, band_finished
from advisor.knowledge.view import View, plain
from advisor.lengths import show
from advisor.operations import band_loops
from advisor.operations.seams import open_seam, press, sew_seam

BAND_ALLOWANCE = inches("3/8")
"""Each side of the seam where a waistband is cut and joined again: source EHOWJ."""
SEWN_ON = ("separate", "faced")
"""Kinds of band that are pieces of their own, opened and sewn on again."""
UNDERLAP = inches("1 1/4")
"""How far a band laps at its closing, 1 to 1 1/4 in: common practice, no source."""


def has_band(view: View) -> bool:
    """Whether a band or a facing of its own is sewn to the edge at the waist."""
    return view.has("waistband") and view.word(f"{view.one('waistband')}.kind") in SEWN_ON


def open_band(view: View, band: str) -> Op:
    """Unpick the band from the garment."""
    op = open_seam(f"{band}.seam", f"the seam that holds {view.words(band)}", Spread(12, 20, 35))
    return replace(
        op,
        says=(
            f"{op.says} Mark and take off any belt loops caught in it, and set them in again with it. A lining sewn "
            "in with it comes off too, its pleats marked, and follows each seam that is moved."
        ),
    )


def sew_band(view: View, band: str) -> Op:
    """Sew the band on again, over the waist seam where that was open too."""
    words = f"{view.words(band)} on again, both ends meeting at the closing"
    sewn = sew_seam(f"{band}.seam", words, Spread(20, 35, 55), "join", f"{band}.press")
    # What lies under the band comes first: the waist seam pressed, or it never lies flat; a zipper, whose tapes
    # run up under it.
    seams = tuple(view.one(role) for role in ("waist_seam",) if view.has(role))
    lying = tuple(f"{verb} {seam}.{slot}" for seam in seams for verb, slot in (("sew", "seam"), ("press", "press")))
    if view.has("front_opening") and not view.has("upper_part"):
        lying += (f"sew {view.one('front_opening')}.kind",)
    return replace(sewn, needs=lying)


def press_band(view: View, band: str) -> Op:
    """Press the band."""
    return press(f"{band}.press", view.words(band), Spread(4, 6, 10), "join")


def seam_band(view: View, band: str, excess: Figure) -> Op:
    """A seam across the band where it meets a seam of the garment."""
    half = figure(each_side, "half", total=excess)
    curved = (
        " The band is curved: slant the seam, so that its top edge loses a little more." if _curved(view, band) else ""
    )
    keep = plain("keep", BAND_ALLOWANCE, "EHOWJ")
    return Op(
        id=f"seam {band}.edge",
        stage="join",
        verb="seam",
        places=(band,),
        setup="straight",
        minutes=Spread(10, 15, 25),
        says=(
            f"Mark two lines across {view.words(band)}, {{excess}} apart, where the garment's own seam meets it, "
            "center back to center back. Fold between them, right sides together, and sew line on line, {half} "
            "from the fold: that takes out what the garment lost. A shaped or pieced band is seamed where the "
            "garment lost it: at both sides, half each, if it was taken in there. Try it round the waist, then cut "
            f"the fold away to {{keep}} each side and press the seam open.{curved}"
        ),
        expects=_bared(view, band, "none"),
        effects=(Change(f"{band}.edge", times(excess, -1, "seamed_out")),),
        reversible=False,
        check_before="the band pinned to the garment's edge ends where the closing wants it",
        figures={"excess": excess, "half": half, "keep": keep},
        materials=(Need("thread to match"),),
    )


def _bared(view: View, band: str, piece: str) -> tuple[Put, ...]:
    """Open, with nothing sitting on it, and no other piece in hand."""
    return (Put(f"{band}.seam", "open"), Put(f"{band}.piece", piece), *band_loops.off(view, band))


def _curved(view: View, band: str) -> bool:
    return view.word(f"{band}.shape") == "curved"


def cut_new_band(view: View, band: str, longer: Figure, sign: int, cloth: str) -> Op:
    """A new band of `cloth`, cut to the edge it finishes; `sign` -1 where the old was too long, 1 where too short."""
    edge = Figure(
        "edge",
        view.mm(f"{band}.edge") + sign * mm_of(longer),
        "what it must come to",
        (f"{band}.edge", longer.id),
        "common-practice",
    )
    finished = figure(band_finished, "finished", body=edge, ease=DOMESTIC_ALLOWANCE * 0, underlap=UNDERLAP)
    long = figure(band_cut, "long", finished=finished, allowance=DOMESTIC_ALLOWANCE)
    wide = figure(strip_cut, "wide", overlap=view.measure(f"{band}.width"), allowance=DOMESTIC_ALLOWANCE)
    size = f"{show(mm_of(long), view.tape)} by {show(mm_of(wide), view.tape)}"
    shaped = ""
    if _curved(view, band):
        shaped = (
            " The old band is curved: take it apart for a pattern, slash that where the garment was altered, and "
            "cut two layers to its shape instead."
        )
    return Op(
        id=f"cut new {band}.piece",
        stage="join",
        verb="cut",
        places=(band,),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            "Cut a new band, {long} long and {wide} wide: the edge it finishes is {edge} round, the ends lap "
            "{underlap}, and 1/2 in is allowed all round. Stiffen it as the old one was, and mark center front, "
            f"sides and center back on it from the old band.{shaped}"
        ),
        expects=_bared(view, band, "none"),
        effects=(Put(f"{band}.piece", "cut"),),
        reversible=False,
        check_before="the edge it is to finish has been measured again, and the cloth is washed",
        figures={"long": long, "wide": wide, "edge": edge, "underlap": plain("underlap", UNDERLAP, "common-practice")},
        materials=(Need(cloth, f"a strip {size}"), Need("interfacing", f"a strip {size}")),
    )


def make_new_band(view: View, band: str, longer: Figure, sign: int) -> Op:
    """The new band folded, its ends closed."""
    return _made(
        view,
        band,
        f"make new {band}.edge",
        Spread(15, 25, 40),
        times(longer, sign, "remade"),
        {},
        "Fold the new band along its middle, right sides together, and sew across both ends. Turn, press the fold, "
        "and mark the lap.",
    )


def cut_band_piece(view: View, band: str, wanting: Figure) -> Op:
    """A piece to lengthen the band, cut with the allowances the cut costs."""
    allowance = plain("allowance", DOMESTIC_ALLOWANCE, "common-practice")
    shown = figure(inset_cut, "piece_finished", wanting=wanting, insets=1, allowance=allowance)
    cut = figure(inset_cut, "piece_cut", wanting=shown, insets=1, allowance=allowance)
    wide = figure(strip_cut, "wide", overlap=view.measure(f"{band}.width"), allowance=allowance)
    size = f"{show(mm_of(cut), view.tape)} by {show(mm_of(wide), view.tape)}"
    return Op(
        id=f"cut {band}.piece",
        stage="join",
        verb="cut",
        places=(band,),
        setup="table",
        minutes=Spread(5, 8, 15),
        says=(
            "Cut a piece {piece_cut} long and {wide} wide. Cutting the band through costs it 1/2 in on each "
            "side, so the piece shows {piece_finished} to lengthen it by {wanting}, and carries 1/2 in of its "
            "own at each end. Where the band already has a seam to open, cut it only {piece_finished} long: it "
            "then shows {wanting}."
        ),
        expects=_bared(view, band, "none"),
        effects=(Put(f"{band}.piece", "cut"),),
        reversible=False,
        check_before="the piece matches in color after a wash and its threads run as the band's do",
        figures={"wanting": wanting, "piece_finished": shown, "piece_cut": cut, "wide": wide},
        materials=(Need("matching cloth", f"a piece {size}"),),
    )


def set_band_piece(view: View, band: str, wanting: Figure) -> Op:
    """The piece sewn in where a garment seam meets the band."""
    return _made(
        view,
        band,
        f"piece {band}.edge",
        Spread(15, 25, 40),
        times(wanting, 1, "pieced"),
        {"wanting": wanting},
        f"Cut {view.words(band)} through where the garment's own seam meets it, center back to center back, or halve "
        "the piece and set it in at both sides. Sew it in, press the seams open, and measure: {wanting} longer "
        "than before.",
    )


def _made(view: View, band: str, id: str, minutes: Spread, by: Figure, figures: dict[str, Figure], says: str) -> Op:
    return Op(
        id=id,
        stage="join",
        verb="sew",
        places=(band,),
        setup="straight",
        minutes=minutes,
        says=says,
        expects=_bared(view, band, "cut"),
        effects=(Change(f"{band}.edge", by), Put(f"{band}.piece", "set")),
        figures=figures,
        materials=(Need("thread to match"),),
    )
