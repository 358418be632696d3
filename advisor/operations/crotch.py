"""How deep the crotch of trousers hangs: taken up at the waist or the inner seams, let down by curve, seams or cloth.

The laws: what is cut off the top comes off everything that hangs from it; a band set in there adds its depth to it.
What goes into the seam from front to back counts half of its width downward.
"""

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.exact import inches
from advisor.figures.fitting import GUSSET_SIDE, gusset_length
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.figures.lower import gusset_width
from advisor.figures.waist import band_cut
from advisor.knowledge.view import View, plain
from advisor.operations.girth import waist_open
from advisor.operations.levels import across
from advisor.operations.marks import seam_allowance
from advisor.operations.seams import press

WAIST = "waist"
RUN = inches("8")
"""How far down the inner seams a change at the crotch runs out: common practice, no source."""


def mark_top(view: View, crotch: str, up: Figure) -> Op:
    """Mark the new top edge."""
    return Op(
        id=f"mark {crotch}.line",
        stage="open",
        verb="mark",
        places=(crotch,),
        setup="body",
        minutes=Spread(8, 12, 20),
        says=(
            f"With the garment on, tie an elastic round the waist and draw the garment up until {view.words(crotch)} "
            "sits well, seated too. Mark all round along the elastic: about {up} below the seam of the band. Let the "
            "line dip up to 1/2 in at center front if the body does."
        ),
        expects=(Put(f"{crotch}.line", "none"),),
        effects=(Put(f"{crotch}.line", "marked"),),
        figures={"up": up},
        try_on=True,
    )


def cut_top(view: View, crotch: str, lower: str, up: Figure) -> Op:
    """Cut the top off: crotch, legs and opening come up by `up`, and the edge is as wide as it is down there."""
    allowance = seam_allowance(view.tape)
    widening = Figure(
        "edge_at_new_line",
        view.mm(f"{crotch}.edge_at_line") - view.mm(f"{lower}.edge"),
        "round at the new line less round at the old",
        (f"{crotch}.edge_at_line", f"{lower}.edge"),
        "case",
    )
    return Op(
        id=f"cut {crotch}.line",
        stage="level",
        verb="cut",
        places=(crotch, lower),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            f"Cut {view.words(lower)} {{seam_allowance}} above the new line. Crotch, legs and the end of the opening "
            "come up {up}; pockets come as much nearer the band."
        ),
        expects=(Put(f"{crotch}.line", "marked"), *waist_open(view)),
        effects=(
            *across(view, view.one(WAIST), up, -1),
            Change(f"{lower}.edge", widening),
            Put(f"{crotch}.line", "cut"),
        ),
        reversible=False,
        check_before="sitting and a stair have been tried with it drawn up, and no pocket or zipper end is in the way",
        figures={"up": up, "seam_allowance": allowance},
    )


def cut_rise_band(view: View, crotch: str, lower: str, depth: Figure, cloth: str) -> Op:
    """Cut a band to go between the garment and its waistband."""
    allowance = seam_allowance(view.tape)
    edge = view.measure(f"{lower}.edge")
    return Op(
        id=f"cut {crotch}.band",
        stage="level",
        verb="cut",
        places=(lower,),
        setup="table",
        minutes=Spread(15, 20, 35),
        says=(
            "Cut the band {band_depth} deep, which finishes {depth} deep, and {band_length} long, its ends at the "
            "opening; divide it at the side seams and add a seam there. It is shaped like a yoke: wider below than "
            "above."
        ),
        expects=(Put(f"{crotch}.band", "none"),),
        effects=(Put(f"{crotch}.band", "cut"),),
        figures={
            "depth": depth,
            "band_depth": figure(inset_cut, "band_depth", wanting=depth, insets=1, allowance=allowance),
            "band_length": figure(band_cut, "band_length", finished=edge, allowance=allowance),
        },
        materials=(Need(cloth, "for the band below the waist"),),
    )


def set_rise_band(view: View, crotch: str, lower: str, depth: Figure) -> Op:
    """Sew the band to the top edge: all that hangs from the waist comes down by its depth."""
    return Op(
        id=f"set {crotch}.band",
        stage="level",
        verb="set",
        places=(crotch, lower),
        setup="straight",
        minutes=Spread(20, 30, 45),
        says=(
            f"Sew the band to the top of {view.words(lower)}, center front, sides and center back meeting, and press "
            "the seam into it. Crotch and legs come down {depth}; the opening grows by it and closes with a hook up "
            "there."
        ),
        expects=(Put(f"{crotch}.band", "cut"), *waist_open(view)),
        effects=(*across(view, view.one(WAIST), depth, 1), Put(f"{crotch}.band", "set")),
        figures={"depth": depth},
        materials=(Need("thread to match"),),
    )


def mark_curve(view: View, crotch: str, down: Figure) -> Op:
    """Mark the crotch curve lower."""
    return Op(
        id=f"mark {crotch}.curve",
        stage="level",
        verb="mark",
        places=(crotch,),
        setup="table",
        minutes=Spread(4, 6, 10),
        says=(
            "Put one leg into the other, right sides together. Draw the lowest part of the crotch curve {down} lower, "
            "running into the old seam a hand's breadth up in front and behind."
        ),
        expects=(Put(f"{crotch}.curve", "set"),),
        effects=(Put(f"{crotch}.curve", "marked"),),
        figures={"down": down},
    )


def sew_curve(view: View, crotch: str, down: Figure) -> Op:
    """Sew and trim the lower curve."""
    return Op(
        id=f"sew {crotch}.curve",
        stage="level",
        verb="sew",
        places=(crotch,),
        setup="straight",
        minutes=Spread(8, 12, 20),
        says=(
            "Sew the new curve twice with short stitches, over a tape in cloth that gives. Try on, sit and climb a "
            "stair; then trim to 3/8 in along the curve, for the old seam above it would still bind. It hangs {down} "
            "lower."
        ),
        expects=(Put(f"{crotch}.curve", "marked"),),
        effects=(
            Change(f"{crotch}.depth", down),
            Put(f"{crotch}.curve", "sewn lower"),
            Put(f"{crotch}.press", "due"),
        ),
        reversible=False,
        check_before="it has been sat in with the new line sewn and the old seam unpicked",
        try_on=True,
        figures={"down": down},
        materials=(Need("thread to match"),),
    )


def press_crotch(view: View, crotch: str) -> Op:
    """Press the crotch seam."""
    return press(f"{crotch}.press", f"the seams at {view.words(crotch)}", Spread(4, 6, 10), "level")


def move_points(view: View, crotch: str, legs: str, by: Figure, sign: int) -> Op:
    """The inner seams moved at the crotch: in (-1) it comes up, out (1) it comes down, by `by`."""
    verb, way, goes = ("take in", "inside", "up") if sign < 0 else ("let out", "outside", "down")
    return Op(
        id=f"{verb} {crotch}.points",
        stage="level",
        verb=verb,
        places=(crotch,),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            f"At the crotch draw the new line of both inner seams {{by}} {way} the old one on front and back alike, "
            f"running out to nothing {{run}} down the leg. "
            f"Basted and tried on with the whole seam, it comes {goes} by {{by}}."
        ),
        expects=(Put(f"{legs}.inseams", "open"),),
        effects=(Change(f"{crotch}.depth", times(by, sign, verb)),),
        figures={"by": by, "run": plain("run", RUN, "common-practice")},
        materials=(Need("marking chalk"),),
    )


def cut_gusset(view: View, crotch: str, deeper: Figure) -> Op:
    """Cut a diamond twice as wide as the crotch is to come down."""
    width = figure(gusset_width, "width", deeper=deeper)
    side = plain("side", GUSSET_SIDE, "common-practice")
    return Op(
        id=f"cut {crotch}.gusset",
        stage="level",
        verb="cut",
        places=(crotch,),
        setup="table",
        minutes=Spread(12, 20, 30),
        says=(
            "Draw a diamond {width} wide in the middle and {gusset_length} from point to point; its four sides then "
            "measure {side}. Add {seam_allowance} all round and cut it from firm cloth of like weight, the length on "
            "the bias so that it gives."
        ),
        expects=(Put(f"{crotch}.gusset", "none"),),
        effects=(Put(f"{crotch}.gusset", "cut"),),
        figures={
            "width": width,
            "side": side,
            "gusset_length": figure(gusset_length, "gusset_length", side=side, width=width),
            "seam_allowance": seam_allowance(view.tape),
        },
        materials=(Need("firm cloth of like weight, washed", "for the gusset"),),
    )


def set_gusset(view: View, crotch: str, legs: str, deeper: Figure) -> Op:
    """Sew the gusset in: the crotch hangs lower by half its width."""
    return Op(
        id=f"set {crotch}.gusset",
        stage="level",
        verb="set",
        places=(crotch,),
        setup="straight",
        minutes=Spread(40, 60, 90),
        says=(
            "Baste the gusset in, its points down the two inner seams, its wide corners at the crotch seam in front "
            "and behind. Sit, squat and climb a stair in it. Then sew one side at a time, from the wide corner to the "
            "point, and stitch twice. The crotch hangs {deeper} lower, and both thighs are wider at the top."
        ),
        expects=(Put(f"{legs}.inseams", "open"), Put(f"{crotch}.gusset", "cut")),
        effects=(Change(f"{crotch}.depth", times(deeper, 1, "let in")), Put(f"{crotch}.gusset", "set")),
        try_on=True,
        figures={"deeper": deeper},
        materials=(Need("thread to match"), Need("basting thread")),
    )
