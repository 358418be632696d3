"""Ends that carry a cuff or a band: cuffs taken off and set again, bands sewn on or set in.

The law: a band adds what it shows, less what its seams take of the end. Both ends are done alike.
"""

from collections.abc import Mapping

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Put
from advisor.core.work import Need, Op, Spread
from advisor.knowledge.view import View
from advisor.operations.hems import CHECK, both, leveled, strips


def take_cuff_off(view: View, place: str) -> Op:
    """Both cuffs taken off; the end is open."""
    return Op(
        id=f"take cuff off {place}.hem",
        stage="hem",
        verb="unpick",
        places=(place,),
        setup="unpick",
        minutes=Spread(12, 20, 35),
        says=(
            f"Mark on each cuff where the seam of {view.words(place)}, the slit and every pleat meet it. Then unpick "
            "both cuffs and put left and right apart."
        ),
        expects=(Put(f"{place}.hem", "sewn"),),
        effects=(Put(f"{place}.hem", "open"),),
        materials=(Need("seam ripper"),),
    )


def set_cuff(view: View, place: str) -> Op:
    """Both cuffs set on the shortened end."""
    return Op(
        id=f"set cuff on {place}.hem",
        stage="hem",
        verb="set",
        places=(place,),
        setup="straight",
        minutes=Spread(25, 40, 60),
        says=(
            f"{view.words(place).capitalize()} is wider or narrower here than where the cuff sat: pleat, gather or "
            "ease the end to the cuff at the marks, the slit where it was. Baste both cuffs on, try on with the "
            "arm bent, then sew and topstitch."
        ),
        expects=(Put(f"{place}.hem", "raw"),),
        effects=(Put(f"{place}.hem", "sewn"),),
        try_on=True,
        materials=(Need("thread to match"),),
    )


def cut_band(view: View, place: str, figures: Mapping[str, Figure], says: str, size: str) -> Op:
    """Cloth cut to lengthen the end."""
    return Op(
        id=f"cut band {place}.strip",
        stage="hem",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(8, 12, 20),
        says=says,
        expects=(Put(f"{place}.strip", "none"),),
        effects=(Put(f"{place}.strip", "cut"),),
        reversible=False,
        check_before="the cloth has been washed like the garment, and its color was held against it in daylight",
        figures=figures,
        materials=(Need("cloth for the bands", strips(view, place, size)),),
    )


def cut_across(view: View, place: str, above: Figure) -> Op:
    """Both ends cut through above an edge that is kept."""
    return Op(
        id=f"cut across {place}.hem",
        stage="hem",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(5, 8, 12),
        says=(
            f"Mark {view.words(place)} {{above}} above its edge, level all round and alike on both sides, and cut "
            "through. Keep the cut-off ends left and right apart."
        ),
        expects=(Put(f"{place}.hem", "sewn"), Put(f"{place}.strip", "cut")),
        effects=(Put(f"{place}.hem", "raw"),),
        reversible=False,
        check_before=CHECK,
        figures={"above": above},
    )


def set_band(view: View, place: str, by: Figure, from_state: str, says: str, figures: Mapping[str, Figure]) -> Op:
    """A band sewn to or into the end: the length gains `by` (mm, net of what the seams take)."""
    return Op(
        id=f"set band {place}.hem",
        stage="hem",
        verb="set",
        places=(place,),
        setup="straight",
        minutes=Spread(25, 40, 60),
        says=says,
        expects=(Put(f"{place}.hem", from_state), Put(f"{place}.strip", "cut")),
        effects=(Change(f"{place}.length", by), Put(f"{place}.hem", "pieced"), *leveled(view, place)),
        figures=figures,
        try_on=True,
        materials=(Need("thread to match"),),
    )


def finish_band(view: View, place: str, says: str) -> Op:
    """The band's free edge or second seam closed."""
    return Op(
        id=f"finish {place}.hem",
        stage="hem",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(15, 25, 40),
        says=says,
        expects=(Put(f"{place}.hem", "pieced"),),
        effects=(Put(f"{place}.hem", "sewn"),),
        materials=(Need("thread to match"),),
    )


def cut_edge_off(view: View, place: str, seam: Figure) -> Op:
    """Both original edges cut off whole, with a seam allowance above their stitching."""
    return Op(
        id=f"cut edge off {place}.hem",
        stage="hem",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(8, 12, 20),
        says=(
            f"Mark {both(view, place)} {{seam}} above the stitching of the old hem, level all round, and "
            "cut the hems off whole. Mark inner and outer seam on them, and keep left and right apart."
        ),
        expects=(Put(f"{place}.hem", "sewn"),),
        effects=(Put(f"{place}.hem", "open"),),
        reversible=False,
        check_before=CHECK,
        figures={"seam": seam},
    )


def set_edge_on(view: View, place: str, seam: Figure) -> Op:
    """The original edges sewn on again: the seam takes its allowance twice."""
    return Op(
        id=f"set edge on {place}.hem",
        stage="hem",
        verb="set",
        places=(place,),
        setup="straight",
        minutes=Spread(30, 45, 70),
        says=(
            "Pin each old hem to its end, right sides together, seams on seams; where the end is wider than the hem, "
            "take it in at the inner seam until both agree. Sew with a seam of {seam} close above the old stitching, "
            "overcast it, press it up, and topstitch it down in the old color. Try on."
        ),
        expects=(Put(f"{place}.hem", "raw"),),
        effects=(Change(f"{place}.length", times(seam, -2, "seamed")), Put(f"{place}.hem", "sewn")),
        figures={"seam": seam},
        try_on=True,
        materials=(Need("topstitching thread to match"),),
    )
