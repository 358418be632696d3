"""A waist that a garment hangs from, helped without moving a long seam: pinches, suspenders, other elastic.

The laws: what draws in over the waist draws in edge and band alike; what hangs from the shoulders may be wider than
the body by what it is.
"""

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.seams import each_side
from advisor.knowledge.view import View
from advisor.operations.girth import SIDES
from advisor.operations.waist_drawn import drawn_in

WAISTS = ("waist", "waist_seam")
"""Roles of a place that says how far round the waist should be."""
JOIN = inches("1")
"""What the ends of elastic lap: common practice, no source."""


def pin_pinches(view: View, lower: str) -> Op:
    """Two pinches pinned across band and back."""
    return Op(
        id=f"pin {lower}.fold",
        stage="girth",
        verb="pin",
        places=(lower,),
        setup="body",
        minutes=Spread(4, 6, 10),
        says=(
            "With the garment on, pin one pinch on each half of the back, through band and cloth, midway between side "
            "and center and clear of belt loops and pockets. Both alike."
        ),
        expects=(Put(f"{lower}.fold", "flat"),),
        effects=(Put(f"{lower}.fold", "pinned"),),
        try_on=True,
    )


def sew_pinches(view: View, lower: str, draws: tuple[Figure, ...]) -> tuple[Op, ...]:
    """Each pinch sewn through: it draws edge and band in by its part."""
    return tuple(
        Op(
            id=f"sew {lower}.{side}_pinch",
            stage="girth",
            verb="sew",
            places=(lower,),
            setup="hand",
            minutes=Spread(5, 8, 12),
            says=(
                f"Sew the {side} pinch through the band from its top edge down, {{depth}} from the fold, which takes "
                "{draw} out, and let it run to nothing 2 in below the band. Fold it toward the center and tack it "
                "down at the top with strong thread."
            ),
            expects=(Put(f"{lower}.fold", "pinned"),),
            effects=drawn_in(view, lower, draw, f"pinched {side}"),
            figures={"draw": draw, "depth": figure(each_side, "depth", total=draw)},
            materials=(Need("strong thread"), Need("thimble")),
        )
        for side, draw in zip(SIDES, draws, strict=True)
    )


def hang_from_shoulders(view: View, lower: str, waist: str, total: Figure) -> Op:
    """Six buttons for suspenders: the waist may be as wide as it is."""
    return Op(
        id=f"hang {lower}.fold",
        stage="girth",
        verb="sew",
        places=(lower,),
        setup="hand",
        minutes=Spread(20, 30, 45),
        says=(
            "Sew six buttons inside the waistband, or outside where that is the style: two pairs in front, above each "
            "crease and 3 in further to the side, and a pair at the back, 1 1/2 in either side of center back. Two "
            "layers of cloth under each. The waist may then stand {total} off the body and does not slip."
        ),
        expects=(Put(f"{lower}.fold", "flat"),),
        effects=(Change(f"{waist}.wanted", total), Put(f"{lower}.fold", "hung")),
        try_on=True,
        figures={"total": total},
        materials=(Need("six flat buttons, 5/8 in"), Need("suspenders"), Need("strong thread")),
    )


def open_casing(view: View, lower: str) -> Op:
    """The casing opened and the old elastic drawn out."""
    return Op(
        id=f"open {lower}.fold",
        stage="girth",
        verb="unpick",
        places=(lower,),
        setup="unpick",
        minutes=Spread(5, 10, 20),
        says=(
            "Open the casing on the inside for 2 in at center back, cut the old elastic and draw it out with the new "
            "one pinned to its end. Where it is stitched through, unpick every row."
        ),
        expects=(Put(f"{lower}.fold", "flat"),),
        effects=(Put(f"{lower}.fold", "cased"),),
        materials=(Need("seam ripper"), Need("safety pin")),
    )


def change_elastic(view: View, lower: str, waist: str, by: Figure, sign: int) -> Op:
    """New elastic in the casing: at rest the waist is as long round as it is wanted."""
    wanted = view.measure(f"{waist}.wanted")
    length = Figure(
        "elastic",
        mm_of(wanted) + JOIN,
        "what it is to measure at rest, and 1 in to lap",
        (wanted.id,),
        "common-practice",
    )
    return Op(
        id=f"change {lower}.fold",
        stage="girth",
        verb="thread",
        places=(lower,),
        setup="body",
        minutes=Spread(10, 15, 25),
        says=(
            "Cut {elastic} of new elastic, as wide as the old, lap the ends 1 in and pin. Try on: it must pass the "
            "hip with 1 in to spare when stretched, and hold when you bend. Sew the lap in a square and close the "
            "casing."
        ),
        expects=(Put(f"{lower}.fold", "cased"),),
        effects=(Change(f"{lower}.edge", times(by, sign, "new elastic")), Put(f"{lower}.fold", "elastic")),
        try_on=True,
        figures={"elastic": length},
        materials=(Need("elastic as wide as the old"),),
    )
