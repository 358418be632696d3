"""Taking in the back of a part that goes round chest and back: darts, a pleat, a tab.

The laws: a dart pointed at both ends takes its intake off the round it lies across and bears what one half of it
bears; a pleat of two folds of depth d takes 4 d; a tab draws in what it is shorter than the cloth behind it.
"""

from dataclasses import dataclass

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures import darts, pleats
from advisor.figures.formula import figure
from advisor.knowledge.view import View
from advisor.operations.darts import MOST_DARTS, NAMES, cloth_of
from advisor.operations.marks import down_to_mark, parts
from advisor.operations.seams import press


@dataclass(frozen=True)
class BackDarts:
    """The darts an amount needs, from left to right, all `length` long; `limit` is the most of one."""

    intakes: tuple[Figure, ...]
    length: Figure
    limit: Figure


def plan_back_darts(view: View, place: str, total: Figure) -> BackDarts | None:
    """Two darts, or four, each pointed at both ends; None where they have no room or would not bear the amount."""
    room = view.measure(f"{place}.dart_room")
    half = Figure("half", mm_of(room) / 2, "from the middle of the dart to a point", (room.id,), "common-practice")
    if mm_of(half) <= 0:
        return None
    limit = down_to_mark(figure(darts.most_each, "bears", length=half, cloth=cloth_of(view)), view.tape, "most_each")
    if not 0 < mm_of(total) <= MOST_DARTS * mm_of(limit):
        return None
    count = darts.needed_in_pairs(mm_of(total), mm_of(limit))
    return BackDarts(parts(total, count, view.tape, "intake"), room, limit)


def mark_back_darts(view: View, place: str, plan: BackDarts) -> Op:
    """Mark the darts in pairs, on the body."""
    where = "halfway between center back and side seam"
    if len(plan.intakes) == 4:
        where = "one third and two thirds of the way from center back to side seam, on each half"
    return Op(
        id=f"mark {place}.fold",
        stage="girth",
        verb="mark",
        places=(place,),
        setup="body",
        minutes=Spread(10, 15, 25),
        says=(
            f"Mark the middle of each dart {where}, straight along the thread. It is widest at the waist and "
            "{dart_length} long, pointed at both ends; the upper point stays 1 in below the shoulder blade. "
            "Pin them and reach forward: the points must not poke."
        ),
        expects=(Put(f"{place}.fold", "flat"),),
        effects=(Put(f"{place}.fold", "marked"),),
        try_on=True,
        figures={"dart_length": plan.length},
        materials=(Need("marking chalk"),),
    )


def sew_back_darts(view: View, place: str, plan: BackDarts) -> tuple[Op, ...]:
    """Sew each dart: the round loses its intake."""
    return tuple(
        Op(
            id=f"sew {place}.{name.replace(' ', '_')}_dart",
            stage="girth",
            verb="sew",
            places=(place,),
            setup="straight",
            minutes=Spread(6, 9, 14),
            says=(
                f"Fold the {name} dart through its middle. At the waist stitch {{fold_to_stitch}} from the fold, which "
                "takes {intake} out; from there run out to nothing at both ends, the last three stitches on the fold. "
                "Tie the ends; a backstitch puckers the point."
            ),
            expects=(Put(f"{place}.fold", "marked"),),
            effects=(Change(f"{place}.round", times(intake, -1, f"{name} dart")), Put(f"{place}.press", "due")),
            figures={
                "intake": intake,
                "fold_to_stitch": figure(darts.fold_to_stitch, "fold_to_stitch", intake=intake),
            },
            materials=(Need("thread to match"),),
        )
        for name, intake in zip(NAMES[len(plan.intakes)], plan.intakes, strict=True)
    )


def press_back_darts(view: View, place: str) -> Op:
    """Press the darts toward the center back."""
    return Op(
        id=f"press {place}.fold",
        stage="girth",
        verb="press",
        places=(place,),
        setup="iron",
        minutes=Spread(5, 8, 12),
        says=(
            "Press each dart flat as sewn, then its bulk toward the center back; where it does not lie flat at the "
            "waist, stretch the fold (with steam, where the label allows it) rather than snip it. Try on."
        ),
        expects=(Put(f"{place}.fold", "marked"), Put(f"{place}.press", "due")),
        effects=(Put(f"{place}.fold", "darted"), Put(f"{place}.press", "done")),
        try_on=True,
    )


def pleat_back(view: View, place: str, total: Figure) -> tuple[Op, ...]:
    """A pleat down the center back, folded, stitched and pressed: the round loses what goes into it."""
    depth = figure(pleats.depth_each, "depth", excess=total, pleats=2)
    mark = Op(
        id=f"mark {place}.pleat",
        stage="girth",
        verb="mark",
        places=(place,),
        setup="body",
        minutes=Spread(8, 12, 20),
        says=(
            "Fold a pleat down the center back, inside out or outside in as you like it: two folds, each {depth} "
            "deep, meet at the center and take {total} together. Pin it from the yoke or neck to the waist; below it "
            "may fall open. Try on and reach forward."
        ),
        expects=(Put(f"{place}.fold", "flat"),),
        effects=(Put(f"{place}.fold", "marked"),),
        try_on=True,
        figures={"depth": depth, "total": total},
    )
    sew = Op(
        id=f"sew {place}.pleat",
        stage="girth",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(12, 18, 28),
        says=(
            "Baste the folds, then sew both down 1/16 in from their edges from the yoke to the waist, and across the "
            "end with a small bar. {total} is gone from there up."
        ),
        expects=(Put(f"{place}.fold", "marked"),),
        effects=(
            Change(f"{place}.round", times(total, -1, "pleated")),
            Put(f"{place}.fold", "pleated"),
            Put(f"{place}.press", "due"),
        ),
        figures={"total": total},
        materials=(Need("thread to match"),),
    )
    return mark, sew, press_body(view, place)


def tab_back(view: View, place: str, total: Figure) -> tuple[Op, ...]:
    """A tab with a button across the back of the waist: it draws the round in and lets it out again."""
    make = Op(
        id=f"make {place}.tab",
        stage="girth",
        verb="make",
        places=(place,),
        setup="straight",
        minutes=Spread(20, 30, 45),
        says=(
            "Make two tabs about 1 in wide of cloth or twill tape, one with a buttonhole. Pin them to the back at the "
            "waist, 2 in inside the side seams, so that buttoned they draw in {total}. Try on, reach forward."
        ),
        expects=(Put(f"{place}.fold", "flat"),),
        effects=(Put(f"{place}.fold", "marked"),),
        try_on=True,
        figures={"total": total},
        materials=(Need("cloth or twill tape for two tabs"), Need("button")),
    )
    sew = Op(
        id=f"sew {place}.tab",
        stage="girth",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(8, 12, 20),
        says="Sew the tabs down in a square with a scrap of cloth behind each, and the button on. It draws in {total}.",
        expects=(Put(f"{place}.fold", "marked"),),
        effects=(Change(f"{place}.round", times(total, -1, "drawn in")), Put(f"{place}.fold", "tabbed")),
        figures={"total": total},
        materials=(Need("thread to match"),),
    )
    return make, sew


def press_body(view: View, place: str) -> Op:
    """Press new stitching of the body."""
    return press(f"{place}.press", f"the new stitching of {view.words(place)}", Spread(5, 8, 12), "girth")
