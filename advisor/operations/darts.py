"""Darts at the back of the part below a waist seam.

The law: a dart takes its intake off the edge it opens on; intake is the cloth that goes, so the stitching lies
half of it from the fold.
"""

from dataclasses import dataclass

from advisor.core.figure import Figure, mm_of, taken, times
from advisor.core.model import Change, Put
from advisor.core.template import Template
from advisor.core.work import Need, Op, Spread
from advisor.figures import darts, fitting
from advisor.figures.formula import figure, figures
from advisor.knowledge.view import View
from advisor.operations.girth import stands_over_behind, tried, waist_open
from advisor.operations.marks import down_to_mark, parts

MOST_DARTS = 4
NAMES = {2: ("left", "right"), 4: ("outer left", "inner left", "inner right", "outer right")}
BEARS = {"wool": "wool", "silk": "other"}
"""What cloth bears in a dart, by kind of cloth; all other kinds are crisp. From memory."""


@dataclass(frozen=True)
class BackDarts:
    """The darts an amount needs: intake of each from left to right, all `length` long; `limit` is the most of one."""

    intakes: tuple[Figure, ...]
    length: Figure
    limit: Figure

    @property
    def count(self) -> int:
        """How many: 2 or 4."""
        return len(self.intakes)


def plan_darts(view: View, lower: str, total: Figure) -> BackDarts | None:
    """Two darts, or four where two cannot bear it; None where a dart has no room at all.

    Where four cannot bear it either they take what they can: the ruling says so.
    """
    room = view.measure(f"{lower}.dart_length")
    if mm_of(room) <= 0:
        return None
    length = room if mm_of(room) <= darts.LONGEST else taken("length", darts.LONGEST, room.id, "TIE3-32")
    bears = figure(darts.most_each, "bears", length=length, cloth=cloth_of(view))
    limit = down_to_mark(bears, view.tape, "most_each")
    if mm_of(limit) <= 0:
        return None
    # The ruling counts with what a dart bears, not with the mark below it: so must this.
    count = min(darts.needed_in_pairs(mm_of(total), mm_of(bears)), MOST_DARTS)
    borne = total if mm_of(total) <= count * mm_of(bears) else times(limit, count, "borne")
    return BackDarts(parts(borne, count, view.tape, "intake"), length, limit)


def cloth_of(view: View) -> str:
    """The word darts.most_each has for the cloth."""
    kind = view.word(f"{view.one('cloth')}.kind") if view.has("cloth") else ""
    return BEARS.get(kind, "crisp")


def mark_darts(view: View, lower: str, plan: BackDarts) -> Op:
    """Mark the darts in pairs about the center line."""
    quarter = figure(fitting.quarter, "quarter", round=view.measure(f"{lower}.edge"))
    places = figures(darts.from_center, "from_center", quarter=quarter, pairs=plan.count // 2)
    known = {"dart_length": plan.length, "from_center": places[0]}
    where = "{from_center} from the center back"
    if len(places) > 1:
        known["from_center_outer"] = places[1]
        known["apart"] = figure(
            darts.cloth_between,
            "apart",
            apart=mm_of(places[1]) - mm_of(places[0]),
            first=plan.intakes[1],
            second=plan.intakes[0],
        )
        where += " and {from_center_outer} from it; sewn, {apart} of cloth stay between the two"
    return Op(
        id=f"mark {lower}.fold",
        stage="girth",
        verb="mark",
        places=(lower,),
        setup="table",
        minutes=Spread(10, 15, 20),
        says=(
            f"On each half of the back mark the middle of a dart {where}. Draw it {{dart_length}} long, on grain or a "
            "little toward the side, and see that its point ends 1/2 in or more above a pocket mouth."
        ),
        expects=(Put(f"{lower}.fold", "flat"), *waist_open(view)),
        effects=(Put(f"{lower}.fold", "marked"),),
        figures=known,
        materials=(Need("marking chalk"),),
    )


def sew_darts(view: View, lower: str, plan: BackDarts) -> tuple[Op, ...]:
    """Sew each dart: the edge loses its intake."""
    return tuple(
        _sew_dart(view, lower, name, intake, plan.length)
        for name, intake in zip(NAMES[plan.count], plan.intakes, strict=True)
    )


def _sew_dart(view: View, lower: str, name: str, intake: Figure, length: Figure) -> Op:
    return Op(
        id=f"sew {lower}.{name.replace(' ', '_')}_dart",
        stage="girth",
        verb="sew",
        places=(lower,),
        setup="straight",
        minutes=Spread(5, 8, 12),
        says=(
            f"Fold the {name} dart through its middle. At the waist stitch {{fold_to_stitch}} from the fold, which "
            "takes {intake} out, and taper to nothing {dart_length} down, the last three stitches on the fold itself. "
            "Tie the ends; a backstitch puckers the point."
        ),
        expects=(Put(f"{lower}.fold", "marked"), *waist_open(view)),
        effects=(Change(f"{lower}.edge", times(intake, -1, f"{name} dart")), Put(f"{lower}.press", "due")),
        figures={
            "intake": intake,
            "fold_to_stitch": figure(darts.fold_to_stitch, "fold_to_stitch", intake=intake),
            "dart_length": length,
        },
        materials=(Need("thread to match"),),
        template=Template("dart", ("fold_to_stitch", "dart_length")),
    )


def press_darts(view: View, lower: str, total: Figure) -> Op:
    """Press the darts, which take `total` out of the back, toward the center back."""
    return Op(
        id=f"press {lower}.fold",
        stage="girth",
        verb="press",
        places=(lower,),
        setup="iron",
        minutes=Spread(5, 8, 12),
        says=(
            "Press each dart flat as sewn, then its bulk toward the center back, over a rounded cushion, paper under "
            f"the fold. Then {tried(view)}: the points must not poke."
        ),
        expects=(Put(f"{lower}.fold", "marked"), Put(f"{lower}.press", "due")),
        effects=(
            Put(f"{lower}.fold", "darted"),
            Put(f"{lower}.press", "done"),
            *stands_over_behind(view, lower, total),
        ),
        try_on=True,
    )
