"""Giving the trunk loop length: a gusset through the crotch, a band set in below the waist seam.

The laws: a diamond let into the inseams adds its middle width to the loop, which runs across it once; a band
set in all round below the waist adds its depth twice, in front and behind, and once to what hangs or opens below.
"""

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.fitting import GUSSET_SIDE, gusset_length
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.figures.waist import band_cut
from advisor.knowledge.view import View, plain
from advisor.operations.levels import across
from advisor.operations.marks import seam_allowance
from advisor.operations.seams import press

UPPER = "upper_part"
SETTLED = (("finish", "sides"), ("press", "press"), ("press", "fold"))
"""What ends work on the width of the lower part."""


def open_inseams(view: View, trunk: str) -> Op:
    """Open both inseams from the crotch down, the crotch seam itself left sewn."""
    return Op(
        id=f"open {trunk}.inseams",
        stage="girth",
        verb="unpick",
        places=(trunk,),
        setup="unpick",
        minutes=Spread(15, 20, 35),
        says=(
            "Unpick both inseams from the crotch down, {side} each and no further. The seam from front to back through "
            "the crotch stays sewn; where it is crossed, secure its ends with a few stitches."
        ),
        expects=(Put(f"{trunk}.inseams", "sewn"),),
        effects=(Put(f"{trunk}.inseams", "open"),),
        # The gusset is fitted in the whole loop, and nothing else is tried on with the crotch open.
        needs=(f"press {view.one('waist_seam')}.press",) if view.has("waist_seam") else (),
        figures={"side": _side()},
        materials=(Need("seam ripper"),),
    )


def cut_gusset(view: View, trunk: str, width: Figure) -> Op:
    """Cut the diamond: as wide as the loop is to gain, its sides as long as the inseams were opened."""
    allowance = seam_allowance(view.tape)
    long = figure(gusset_length, "gusset_length", side=_side(), width=width)
    return Op(
        id=f"cut {trunk}.gusset",
        stage="girth",
        verb="cut",
        places=(trunk,),
        setup="table",
        minutes=Spread(12, 20, 30),
        says=(
            "Draw a diamond {width} wide in the middle and {gusset_length} from point to point; its four sides then "
            "measure {side}. Add {seam_allowance} all round and cut it from firm cloth of like weight, the length on "
            "the bias so that it gives."
        ),
        expects=(Put(f"{trunk}.gusset", "none"),),
        effects=(Put(f"{trunk}.gusset", "cut"),),
        figures={"width": width, "gusset_length": long, "side": _side(), "seam_allowance": allowance},
        materials=(Need("firm cloth of like weight, washed", "for the gusset"),),
    )


def set_gusset(view: View, trunk: str, width: Figure) -> Op:
    """Sew the gusset into the opened inseams: the loop gains its middle width."""
    gain = times(width, 1, "let in")
    return Op(
        id=f"set {trunk}.gusset",
        stage="girth",
        verb="set",
        places=(trunk,),
        setup="straight",
        minutes=Spread(40, 60, 90),
        says=(
            "Baste the gusset in, its points at the ends of the two openings, its wide corners at the crotch seam in "
            "front and behind. Sit, squat and climb a stair in it. Then sew one side at a time, from the wide corner "
            "to the point, finish the edges and stitch twice. The loop gains {width}."
        ),
        expects=(Put(f"{trunk}.inseams", "open"), Put(f"{trunk}.gusset", "cut")),
        effects=(
            Change(f"{trunk}.loop", gain),
            Change(f"{trunk}.halves", gain),
            Put(f"{trunk}.gusset", "set"),
            Put(f"{trunk}.inseams", "sewn"),
            Put(f"{trunk}.press", "due"),
        ),
        try_on=True,
        figures={"width": width},
        materials=(Need("thread to match"), Need("basting thread")),
    )


def press_gusset(view: View, trunk: str) -> Op:
    """Press the seams of the gusset."""
    return press(f"{trunk}.press", "the seams of the gusset", Spread(5, 8, 12), "girth")


def cut_rise_band(view: View, trunk: str, seam: str, lower: str, depth: Figure) -> Op:
    """Cut a band to go between the lower part and the waist seam."""
    allowance = seam_allowance(view.tape)
    return Op(
        id=f"cut {trunk}.band",
        stage="girth",
        verb="cut",
        places=(lower,),
        setup="table",
        minutes=Spread(15, 20, 35),
        says=(
            f"Measure the top of {view.words(lower)} as it is now: the band is cut that long and a seam more at each "
            "end, {band_length_cut} if the waist came out as wanted, its ends at the opening, and {band_depth_cut} "
            "deep, which finishes {depth} deep. Divide it at the side seams and add a seam there. Mark center front, "
            "sides and center back on both edges."
        ),
        expects=(Put(f"{trunk}.band", "none"),),
        effects=(Put(f"{trunk}.band", "cut"),),
        # Only when the width is settled is it known how long the band is, and seams are pressed before it crosses them.
        needs=tuple(f"{done} {lower}.{slot}" for done, slot in SETTLED),
        figures={
            "depth": depth,
            "band_depth_cut": figure(inset_cut, "band_depth_cut", wanting=depth, insets=1, allowance=allowance),
            "band_length_cut": figure(
                band_cut, "band_length_cut", finished=view.measure(f"{seam}.wanted"), allowance=allowance
            ),
        },
        materials=(Need("matching cloth, washed", "for the band below the waist"),),
    )


def set_rise_band(view: View, trunk: str, seam: str, lower: str, depth: Figure) -> Op:
    """Sew the band to the top of the lower part: all that crosses the seam gains, the part above does not."""
    return Op(
        id=f"set {trunk}.band",
        stage="girth",
        verb="set",
        places=(lower,),
        setup="straight",
        minutes=Spread(20, 30, 45),
        says=(
            f"Sew the band to the top of {view.words(lower)}, marks on marks, and press the seam into the band. Its "
            "upper edge goes into the waist seam. The waist stays where it is; legs and opening get {depth} longer."
        ),
        expects=(Put(f"{seam}.seam", "open"), Put(f"{trunk}.band", "cut")),
        effects=(*across(view, seam, depth, 1, but=UPPER), Put(f"{trunk}.band", "set")),
        figures={"depth": depth},
        materials=(Need("thread to match"),),
    )


def _side() -> Figure:
    return plain("side", GUSSET_SIDE, "common-practice")
