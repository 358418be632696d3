"""What belongs to skirts: linings that follow a hem, vents that stay long enough, room for a step, a level edge.

The laws: a tuck of depth d takes 2 d; a seam opened by n further up makes a vent n longer; a slit or a godet opens
the edge by what it stands open there.
"""

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.knowledge.view import View, plain
from advisor.operations.marks import parts, seam_allowance

FOLD = inches("1/2")
"""What the narrow hem of a lining takes, twice 1/4 in. Source OSU-L87."""
SLITS = ("left", "right")


def pin_lining(view: View, lining: str, depth: Figure) -> Op:
    """A fold pinned in the lining."""
    return Op(
        id=f"pin {lining}.tuck",
        stage="finish",
        verb="pin",
        places=(lining,),
        setup="table",
        minutes=Spread(4, 6, 10),
        says=(
            f"Hang the garment up and pin a fold all round {view.words(lining)}, {{depth}} deep, on the side that "
            "does not show, above its hem: it takes {taken} up."
        ),
        expects=(Put(f"{lining}.tuck", "none"), Put(f"{lining}.hem", "sewn")),
        effects=(Put(f"{lining}.tuck", "pinned"),),
        figures={"depth": depth, "taken": times(depth, 2, "taken")},
    )


def sew_lining_tuck(view: View, lining: str, depth: Figure) -> Op:
    """The fold sewn."""
    return Op(
        id=f"sew {lining}.tuck",
        stage="finish",
        verb="sew",
        places=(lining,),
        setup="straight",
        minutes=Spread(8, 12, 20),
        says="Sew the fold {depth} from its edge, seams in line, and press it down.",
        expects=(Put(f"{lining}.tuck", "pinned"),),
        effects=(Change(f"{lining}.reach", times(depth, -2, "taken")), Put(f"{lining}.tuck", "sewn")),
        figures={"depth": depth},
        materials=(Need("thread to match"),),
    )


def hem_lining(view: View, lining: str, long: Figure) -> tuple[Op, ...]:
    """The lining marked, cut and hemmed again, twice 1/4 in."""
    fold = plain("fold", FOLD, "OSU-L87")
    off = Figure("off", mm_of(long) - FOLD, "what is too long less the new hem", (long.id, "fold"), "common-practice")
    mark = Op(
        id=f"mark {lining}.hem",
        stage="finish",
        verb="mark",
        places=(lining,),
        setup="table",
        minutes=Spread(5, 8, 15),
        says=(
            "Hang the garment up, closed. Mark the lining all round 3/4 in above the finished edge of the garment: "
            "that is {long} above its own edge."
        ),
        expects=(Put(f"{lining}.hem", "sewn"), Put(f"{lining}.tuck", "none")),
        effects=(Put(f"{lining}.hem", "marked"),),
        figures={"long": long},
    )
    cut = Op(
        id=f"cut {lining}.hem",
        stage="finish",
        verb="cut",
        places=(lining,),
        setup="table",
        minutes=Spread(4, 6, 10),
        says="Cut the lining {fold} below the mark: {off} falls away from the old finished edge, its hem with it.",
        expects=(Put(f"{lining}.hem", "marked"),),
        effects=(Change(f"{lining}.reach", times(off, -1, "cut off")), Put(f"{lining}.hem", "raw")),
        reversible=False,
        check_before="the hem of the garment is done and pressed, and the lining hangs free of every seam",
        figures={"fold": fold, "off": off},
    )
    sew = Op(
        id=f"sew {lining}.hem",
        stage="finish",
        verb="sew",
        places=(lining,),
        setup="straight",
        minutes=Spread(12, 20, 30),
        says="Turn the edge twice by 1/4 in, {fold} in all, press and topstitch it.",
        expects=(Put(f"{lining}.hem", "raw"),),
        effects=(Change(f"{lining}.reach", times(fold, -1, "turned")), Put(f"{lining}.hem", "sewn again")),
        figures={"fold": fold},
        materials=(Need("thread to match"),),
    )
    return mark, cut, sew


def lengthen_vent(view: View, vent: str, by: Figure) -> tuple[Op, ...]:
    """The seam above a vent opened further up, its end made fast again."""
    words = view.words(vent)
    opened = Op(
        id=f"open {vent}.seam",
        stage="finish",
        verb="unpick",
        places=(vent,),
        setup="unpick",
        minutes=Spread(8, 12, 20),
        says=(
            f"Take the tack at the top of {words} out and unpick the seam above it {{by}} further up. Where it is "
            "lined, loosen the lining along both edges of it first, as far up."
        ),
        expects=(Put(f"{vent}.seam", "sewn"),),
        effects=(Change(f"{vent}.needed", times(by, -1, "opened")), Put(f"{vent}.seam", "open")),
        figures={"by": by},
        materials=(Need("seam ripper"),),
    )
    fast = Op(
        id=f"raise {vent}.seam",
        stage="finish",
        verb="sew",
        places=(vent,),
        setup="straight",
        minutes=Spread(12, 20, 35),
        says=(
            f"Face or turn the two edges as they are below, the lap of {words} cut on with a piece where it has one. "
            "At the hem fold each corner again as it was, square, its facing over the hem, and sew it by hand. "
            "Sew the end fast with a bar across it, over a scrap of tape: it is the first place to tear. A lining is "
            "slit as far up, turned back and sewn to both edges, loose. Press."
        ),
        expects=(Put(f"{vent}.seam", "open"),),
        effects=(Put(f"{vent}.seam", "raised"),),
        materials=(Need("thread to match"), Need("a scrap of tape")),
    )
    return opened, fast


def slits(view: View, vent: str, total: Figure) -> tuple[Op, ...]:
    """Both side seams opened from the edge up."""
    return tuple(
        Op(
            id=f"slit {vent}.{side}",
            stage="finish",
            verb="open",
            places=(vent,),
            setup="straight",
            minutes=Spread(15, 25, 40),
            says=(
                f"Open the hem for 2 in at the {side} side seam and unpick the seam from the edge up, until it stands "
                "open {part} at the edge when she strides. Press the allowances back, stitch them down 1/4 in from "
                "the edge, close the hem, and bar the top over a scrap of tape."
            ),
            expects=(Put(f"{vent}.kind", "none"),),
            effects=(Change(f"{vent}.opened", part),),
            try_on=True,
            figures={"part": part},
            materials=(Need("seam ripper"), Need("thread to match"), Need("a scrap of tape")),
        )
        for side, part in zip(SLITS, parts(total, 2, view.tape, "part"), strict=True)
    )


def godets(view: View, vent: str, total: Figure, cloth: str) -> tuple[Op, ...]:
    """A wedge of cloth let into each side seam at the edge."""
    shares = parts(total, 2, view.tape, "part")
    allowance = seam_allowance(view.tape)
    wide = figure(inset_cut, "godet_cut", wanting=shares[0], insets=1, allowance=allowance)
    cut = Op(
        id=f"cut {vent}.cloth",
        stage="finish",
        verb="cut",
        places=(vent,),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            "Cut two wedges {godet_cut} wide at the edge with {seam_allowance} for each seam, as tall as the seam has "
            "to open, with a hem like the garment's; grain down the middle."
        ),
        expects=(Put(f"{vent}.cloth", "none"),),
        effects=(Put(f"{vent}.cloth", "cut"),),
        figures={"godet_cut": wide, "seam_allowance": allowance},
        materials=(Need(cloth, "two wedges"),),
    )
    sets = tuple(
        Op(
            id=f"set {vent}.{side}",
            stage="finish",
            verb="set",
            places=(vent,),
            setup="straight",
            minutes=Spread(25, 40, 60),
            says=(
                f"Open the hem and the {side} side seam from the edge up, and sew the wedge in, point up: one side to "
                "the point, needle down, then the other. At the edge it opens {part}. Hem it with the garment and "
                "press."
            ),
            expects=(Put(f"{vent}.kind", "none"), Put(f"{vent}.cloth", "cut")),
            effects=(Change(f"{vent}.opened", part),),
            try_on=True,
            figures={"part": part},
            materials=(Need("seam ripper"), Need("thread to match")),
        )
        for side, part in zip(SLITS, shares, strict=True)
    )
    return cut, *sets
