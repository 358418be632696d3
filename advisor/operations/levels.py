"""Moving a waist seam up or down.

The law: what is taken out of the garment at a seam is taken out of every length that runs across it, as
many times as it crosses; what is set in comes to every such length. The garment says what crosses; nobody
writes "the zipper is then too long".
"""

from fractions import Fraction

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Put, place_of
from advisor.core.work import Need, Op, Spread
from advisor.figures import elastic
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.figures.trunk import loop_loss, strip_cut_off
from advisor.figures.waist import band_cut
from advisor.knowledge.view import View
from advisor.operations.marks import seam_allowance

HANGING = "leg_end"
UPPER_EDGE = (
    ("set", "strips"),
    ("let out", "sides"),
    ("take in", "sides"),
    ("press", "press"),
    ("draw up", "edge"),
    ("ease", "edge"),
    ("pleat", "edge"),
    ("dart", "edge"),
)
"""Work that makes the edge of the upper part as long as the one it meets."""


def mark_new_waist(view: View, seam: str) -> Op:
    """Mark the new line on the upper part, on the body."""
    return Op(
        id=f"mark {seam}.line",
        stage="open",  # on the body, so before the seam is opened
        verb="mark",
        places=(seam,),
        setup="body",
        minutes=Spread(8, 12, 20),
        says=(
            "With the garment on, mark the new waist along a narrow elastic tied round the body: all round, level on "
            "the body and not measured from the floor. Let it dip up to 1/2 in at center front if the body does. Where "
            "left and right differ by 1/4 in or less take the middle; otherwise mark each side for itself. With the "
            "new line pinned up, sit, bend and climb a stair."
        ),
        expects=(Put(f"{seam}.line", "none"), Put(f"{seam}.seam", "sewn")),
        effects=(Put(f"{seam}.line", "marked"),),
    )


def cut_new_waist(view: View, seam: str, upper: str, raised: Figure) -> Op:
    """Cut the upper part `raised` mm higher, a seam allowance below the new line.

    Every length across the seam loses `raised`, as many times as it crosses; the upper edge is from now
    on as wide as the part is at the new line. FigureError where the new allowance finds no cloth.
    """
    allowance = seam_allowance(view.tape)
    strip = figure(
        strip_cut_off, "strip", raised=raised, old_allowance=view.measure(f"{seam}.allowance"), allowance=allowance
    )
    widening = Figure(
        "edge_at_new_line",
        view.mm(f"{upper}.edge_at_mark") - view.mm(f"{upper}.edge"),
        "round at the new line less round at the old",
        (f"{upper}.edge_at_mark", f"{upper}.edge"),
        "case",
    )
    figures = {"raise": raised, "seam_allowance": allowance, "strip": strip}
    rises = "Legs and pocket mouths come up {raise} with the seam"
    if view.has("trunk"):
        figures["trunk_loss"] = figure(loop_loss, "trunk_loss", raised=raised)
        rises += ", and the trunk, front and back together, loses {trunk_loss}"
    return Op(
        id=f"cut {seam}.line",
        stage="level",
        verb="cut",
        places=(upper,),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            f"Cut {view.words(upper)} {{seam_allowance}} below the new line, measured from the line and not from the "
            "floor or the old edge: that is the seam allowance, on the side that falls away. The strip that falls is "
            f"{{strip}} deep from the old raw edge; if it is not, mark again. {rises}."
        ),
        expects=(Put(f"{seam}.line", "marked"), Put(f"{seam}.seam", "open")),
        effects=(*across(view, seam, raised, -1), Change(f"{upper}.edge", widening), Put(f"{seam}.line", "cut")),
        reversible=False,
        check_before=(
            "the new line is level on the body, sitting and bending have been tried with it pinned, and the allowance "
            "lies below it"
        ),
        figures=figures,
    )


def across(view: View, seam: str, amount: Figure, sign: int, but: str = "") -> tuple[Change, ...]:
    """The changes when `amount` comes out of (-1) or into (1) the cloth at a seam; lengths of role `but` spared."""
    return tuple(
        Change(crossing.length, times(amount, sign * crossing.times, f"{amount.id} across"))
        for crossing in view.across(seam)
        if view.model.places[place_of(crossing.length)].role != but
    )


def let_down_waist(view: View, seam: str, lowered: Figure, each: Figure, stays: Figure) -> Op:
    """Let the waist seam down into its own allowances, half of the amount on each side of it."""
    return Op(
        id=f"let down {seam}.line",
        stage="level",
        verb="let down",
        places=(seam,),
        setup="table",
        minutes=Spread(10, 15, 20),
        says=(
            "Draw a new stitching line {each} outside the old one, on both edges, into the allowance; {stays} of it "
            "stays. Steam the old line, if the label allows, and look in daylight: if it still shows, it will stay."
        ),
        expects=(Put(f"{seam}.seam", "open"), Put(f"{seam}.line", "none")),
        effects=(*across(view, seam, lowered, 1), Put(f"{seam}.line", "let down")),
        figures={"lowered": lowered, "each": each, "stays": stays},
    )


def cut_inset(view: View, seam: str, depth: Figure) -> Op:
    """Cut a band to be set between the two edges of the waist seam."""
    allowance = seam_allowance(view.tape)
    round_it = view.measure(f"{seam}.wanted")
    figures = {
        "depth": depth,
        "band_depth_cut": figure(inset_cut, "band_depth_cut", wanting=depth, insets=1, allowance=allowance),
        "band_length_cut": figure(band_cut, "band_length_cut", finished=round_it, allowance=allowance),
    }
    return Op(
        id=f"cut {seam}.inset",
        stage="level",
        verb="cut",
        places=(seam,),
        setup="table",
        minutes=Spread(15, 20, 35),
        says=(
            "Cut the band {band_depth_cut} deep, which finishes {depth} deep, and {band_length_cut} long, the ends at "
            "the opening; where there is a side seam cut it in two and add a seam. Grain and nap as in the cloth it "
            "meets. Mark center front, sides and center back on both edges."
        ),
        expects=(Put(f"{seam}.inset", "none"),),
        effects=(Put(f"{seam}.inset", "cut"),),
        figures=figures,
        materials=(Need("matching cloth, washed", "for the band at the waist"),),
    )


def set_inset(view: View, seam: str, upper: str, depth: Figure) -> Op:
    """Sew the band to the upper part: everything that crosses the seam gains its depth."""
    return Op(
        id=f"set {seam}.inset",
        stage="level",
        verb="set",
        places=(seam, upper),
        setup="straight",
        minutes=Spread(20, 30, 45),
        says=(
            f"Sew the band to the edge of {view.words(upper)}, marks on marks, and press the seam into the band. Its "
            "lower edge then goes into the waist seam. The waist comes down {depth}, measured between the two seams."
        ),
        expects=(Put(f"{seam}.seam", "open"), Put(f"{seam}.inset", "cut")),
        effects=(*across(view, seam, depth, 1), Put(f"{seam}.inset", "set")),
        # Once the band is on, the edge above it can be made neither wider nor narrower.
        needs=tuple(f"{work} {upper}.{slot}" for work, slot in UPPER_EDGE),
        figures={"depth": depth},
        materials=(Need("thread to match"),),
    )


def sew_casing(view: View, seam: str) -> Op:
    """A casing on the inside, over the waist seam."""
    return Op(
        id=f"sew {seam}.casing",
        stage="level",
        verb="sew",
        places=(seam,),
        setup="straight",
        minutes=Spread(20, 30, 45),
        says=(
            "On the inside lay a strip of soft tape or bias, 1 1/4 in wide, over the waist seam and stitch both edges, "
            "one to the seam allowance, one through the part above. Leave the ends open at the front opening."
        ),
        expects=(Put(f"{seam}.casing", "none"),),
        effects=(Put(f"{seam}.casing", "sewn"),),
        needs=(f"press {seam}.press",),
        materials=(Need("soft tape or bias, 1 1/4 in wide", "once round the waist"), Need("thread to match")),
    )


def fill_casing(view: View, seam: str, upper: str, blouse: Figure) -> Op:
    """Elastic in the casing: the seam stays up at the waist and what is too long above it blouses over.

    The upper part may from now on be longer by `blouse`; what hangs below comes up by it. Nothing is cut.
    """
    length = figure(
        elastic.cut,
        "elastic",
        finished=view.measure(f"{seam}.wanted"),
        share=Fraction(9, 10),
        join=inches("1"),
    )
    hung = tuple(
        Change(crossing.length, times(blouse, -crossing.times, "pulled up"))
        for crossing in view.across(seam)
        if view.model.places[place_of(crossing.length)].role == HANGING
    )
    return Op(
        id=f"fill {seam}.casing",
        stage="level",
        verb="thread",
        places=(seam,),
        setup="body",
        minutes=Spread(10, 15, 20),
        says=(
            "Thread {elastic} of elastic, 3/4 in wide, stitch one end fast, put the garment on and pull the seam up to "
            "the waist until {blouse} blouses over it all round. Sit, reach up, and stitch the other end fast."
        ),
        expects=(Put(f"{seam}.casing", "sewn"),),
        effects=(Change(f"{upper}.wanted", blouse), *hung, Put(f"{seam}.casing", "filled")),
        try_on=True,
        figures={"elastic": length, "blouse": blouse},
        materials=(Need("elastic, 3/4 in wide", "the waist of the body and a little over"),),
    )
