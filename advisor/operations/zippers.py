"""Zippers down a front: out, shorter, new, back in.

The laws: a zipper keeps its length when the cloth beside it does not; it is shortened at the end that holds
nothing; a stop is there before the tape is cut and before the slider can reach the end.
"""

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Effect, Key, Put
from advisor.core.work import Need, Op, Spread
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.zippers import TAIL, cut_at, label_length, mark_at, shorten_by, stock_longer, top_cut_at
from advisor.knowledge.view import View, plain
from advisor.lengths import show

ZIPPERS = ("closed_end", "separating")
TOP_FOLD = inches("1/2")
"""What is folded back of the tape kept above a new top stop. Source IRONF."""


def covered(view: View, place: str) -> bool:
    """Whether a fly, a facing or a lining has to be opened for the zipper, and closed over it again."""
    return view.word(f"{place}.setting") == "covered"


def from_top(view: View, place: str) -> bool:
    """Whether a zipper of this kind is shortened from the top: pin and box, and metal teeth, leave no choice."""
    return view.word(f"{place}.kind") == "separating" or view.word(f"{place}.teeth") == "metal"


def unpick_zipper(view: View, place: str) -> Op:
    """The zipper out: nothing closes the opening, and its edges are bare."""
    first = "Open the facing or lining along the zipper first. " if covered(view, place) else ""
    return Op(
        id=f"open {place}.kind",
        stage="open",
        verb="unpick",
        places=(place,),
        setup="unpick",
        minutes=Spread(20, 35, 60) if covered(view, place) else Spread(12, 20, 35),
        says=(
            f"{first}Unpick the zipper from {view.words(place)}, before any seam it crosses is opened, and keep it "
            "whole. Mark on both edges where its top stop sat. Brush out the threads. Until something closes it again, "
            "pin the front shut for every trying on."
        ),
        expects=(Put(f"{place}.kind", view.word(f"{place}.kind")),),
        effects=(Put(f"{place}.kind", "none"), Put(f"{place}.edge", "bare")),
        materials=(Need("seam ripper"),),
    )


def shorten(view: View, place: str, slot: str, length: Figure, run: Figure, top: bool) -> tuple[Op, ...]:
    """Mark, stop, cut: the zipper `slot` ("zipper", "new_zipper", "fly_zipper") of `length` comes to `run`."""
    less = figure(shorten_by, "shorten_by", zipper=length, opening=run)
    key = f"{place}.{slot}"
    begin = "whole" if slot == "zipper" else "laid"
    figures = {"zipper_length": run, "shorten_by": less, **(_top_figures(run) if top else _bottom_figures(run))}
    teeth = "coil" if slot == "fly_zipper" else view.word(f"{place}.teeth")
    mark = _step(place, key, "mark", begin, "marked", Spread(4, 6, 10), _mark_words(top), figures)
    # At the top there are two stops to make, and teeth to draw.
    minutes = Spread(10, 16, 28) if top else Spread(6, 10, 18)
    stop = _step(place, key, "stop", "marked", "stopped", minutes, _stop_words(top, teeth), figures)
    cut = Op(
        id=f"cut {key}",
        stage="closure",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(2, 3, 5),
        says=(
            "Cut the tapes {cut} above the bottom stop, with scissors that may cut no tooth, and fold {fold} of each "
            "back."
            if top
            else (
                "Cut the tape {cut} below the top stop: {tail} is left under the new stop. One source leaves 1 in; "
                "either holds."
            )
        ),
        expects=(Put(f"{place}.kind", "none"), Put(key, "stopped")),
        effects=(Change(f"{place}.closure", times(less, -1, "cut from the zipper")), Put(key, "ready")),
        reversible=False,
        check_before="the slider, pulled hard, cannot pass the new stop, and the zipper lies flat along the edge",
        figures=figures,
    )
    return mark, stop, cut


def _bottom_figures(run: Figure) -> dict[str, Figure]:
    mark = figure(mark_at, "mark", wanted=run)
    tail = plain("tail", TAIL, "WZIP")
    return {"mark": mark, "tail": tail, "cut": figure(cut_at, "cut", mark=mark, tail=tail)}


def _top_figures(run: Figure) -> dict[str, Figure]:
    return {"cut": figure(top_cut_at, "cut", wanted=run), "fold": plain("fold", TOP_FOLD, "IRONF")}


def _mark_words(top: bool) -> str:
    if top:
        return (
            "Close the zipper. From the bottom stop mark {zipper_length} up on both sides for the new top stops, and "
            "{cut} up for the cut: it loses {shorten_by} at the top. Check both sides at the finished edge."
        )
    return (
        "Close the zipper. From the top stop mark {mark} down for the new bottom stop: {zipper_length}, and 3/16 in "
        "that the stop takes up. It loses {shorten_by}. Check it at the finished edge."
    )


def _stop_words(top: bool, teeth: str) -> str:
    if not top:
        over = "over the coil" if teeth == "coil" else "between two teeth, round both tapes and over no tooth,"
        return (
            f"Work 20 to 25 whip stitches {over} at the mark, or 10 to 12 with doubled thread. Draw the slider down "
            "against them: it must stop there."
        )
    if teeth == "coil":
        return (
            "Open the zipper half way. Whip-stitch a new stop over the coil at each mark, the two level with each "
            "other, before anything is cut and before the slider goes near."
        )
    return (
        "Open the zipper half way. Draw the teeth above each mark with pliers, one by one, as far as the cut; shield "
        "the eyes. Set a new top stop close above the last tooth on both sides, level, before the slider goes near."
    )


def lay_new(view: View, place: str, slot: str, run: Figure, instead_of: Figure | None) -> tuple[Op, ...]:
    """A bought zipper laid along the run: the next stock length, shortened where it is over. Ends "ready"."""
    buy = figure(stock_longer, "buy", opening=run)
    over = mm_of(buy) > mm_of(run)
    kind = "separating" if view.word(f"{place}.kind") == "separating" and slot == "new_zipper" else "closed_end"
    top = from_top(view, place) if slot == "new_zipper" else False
    taken = () if instead_of is None else (Change(f"{place}.closure", times(instead_of, -1, "the old zipper")),)
    renewed: tuple[Effect, ...] = () if slot == "fly_zipper" else (Put(f"{place}.worn", "sound"),)
    figures = {"zipper_length": run, "buy": buy}
    lay = Op(
        id=f"lay {place}.{slot}",
        stage="closure",
        verb="lay",
        places=(place,),
        setup="table",
        minutes=Spread(3, 5, 10),
        says=(
            "Wash a zipper on cotton tape first, hot, so that it does not draw up later. Close the new zipper, {buy} "
            "from stop to stop, and lay it along the {zipper_length} it has to close: its tape must lie smooth."
        ),
        expects=(Put(f"{place}.kind", "none"), Put(f"{place}.{slot}", "none")),
        effects=(
            *taken,
            Change(f"{place}.closure", buy),
            *renewed,
            Put(f"{place}.{slot}", "laid" if over else "ready"),
        ),
        figures=figures,
        materials=(Need(_to_buy(kind, view.word(f"{place}.teeth"), slot), _sold_as(buy, view)),),
    )
    return (lay, *(shorten(view, place, slot, buy, run, top) if over else ()))


def _to_buy(kind: str, teeth: str, slot: str) -> str:
    if slot == "fly_zipper":
        return "closed-end zipper with a plastic coil, for the fly"
    made = {"coil": "a plastic coil", "metal": "metal teeth", "moulded": "single plastic teeth"}[teeth]
    return f"{'separating' if kind == 'separating' else 'closed-end'} zipper with {made}"


def _sold_as(buy: Figure, view: View) -> str:
    label = mm_of(figure(label_length, "label", length=buy)) / 10
    inch = mm_of(buy) / inches(1)
    return f"{show(mm_of(buy), view.tape)} (sold as {inch} in or {label} cm)"


def set_in(view: View, place: str, slot: str) -> Op:
    """The zipper back in: something closes the opening, and its edges are finished."""
    old = view.word(f"{place}.kind")
    last = " Close the facing or lining over the tapes by hand." if covered(view, place) else ""
    return Op(
        id=f"sew {place}.kind",
        stage="closure",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(45, 70, 110) if covered(view, place) else Spread(25, 40, 60),
        says=(
            "Baste the zipper in with its top stop at the top of the opening, the seams that cross it level on both "
            "sides. "
            f"Close it, try on, then stitch both sides from the bottom to the top.{last} Press over a towel."
        ),
        expects=(Put(f"{place}.kind", "none"), Put(f"{place}.{slot}", "ready")),
        effects=(Put(f"{place}.kind", old if old in ZIPPERS else "closed_end"), Put(f"{place}.edge", "finished")),
        try_on=True,
        materials=(Need("zipper foot"), Need("thread to match"), Need("basting thread")),
    )


def set_fly(view: View, place: str) -> Op:
    """The fly zipper in, below the waist."""
    return Op(
        id=f"set {place}.fly_zipper",
        stage="closure",
        verb="set",
        places=(place,),
        setup="straight",
        minutes=Spread(35, 50, 80),
        says=(
            "Below the waist face the upper edge for a fly and set the zipper under it, its top stop just below the "
            "waist seam and its end at the end of the opening. Stitch both sides from the bottom to the top, then "
            "the "
            "curve of the fly, and a bar across its end."
        ),
        expects=(Put(f"{place}.kind", "none"), Put(f"{place}.fly_zipper", "ready")),
        effects=(Put(f"{place}.fly_zipper", "set"),),
        materials=(Need("zipper foot"), Need("thread to match")),
    )


def new_slider(view: View, place: str) -> Op:
    """A new slider on the old teeth."""
    worn = view.word(f"{place}.worn")
    return Op(
        id=f"swap {place}.worn",
        stage="closure",
        verb="swap",
        places=(place,),
        setup="hand",
        minutes=Spread(8, 15, 30),
        says=(
            "Read the size on the back of the old slider. Take the stops off the upper end, for the lower end holds "
            "the two sides together; run the old slider off there and the new one on, both sides level, and set new "
            "stops before it is drawn back and forth."
        ),
        expects=(Put(f"{place}.worn", worn),),
        effects=(Put(f"{place}.worn", "sound"),),
        materials=(Need("slider of the same size and make of teeth"), Need("zipper stops"), Need("pliers")),
    )


def sew_end_shut(view: View, place: str, amount: Figure) -> Op:
    """The lower end of the opening sewn shut by `amount`, for a zipper that is too short for it."""
    return Op(
        id=f"sew {place}.opening",
        stage="closure",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(10, 15, 25),
        says=(
            "From the lower end up sew {sewn_shut} of the opening as a seam, in line with the seam below it, "
            "back-stitched at the top. The zipper moves up so that its top stop sits at the top edge."
        ),
        expects=(Put(f"{place}.kind", "none"), Put(f"{place}.zipper", "whole")),
        effects=(Change(f"{place}.opening", times(amount, -1, "sewn shut")), Put(f"{place}.zipper", "ready")),
        try_on=True,
        figures={"sewn_shut": amount},
        materials=(Need("thread to match"),),
    )


def old_run(view: View, place: str) -> Figure:
    """What the present closure closes, to be put off against a new one."""
    return view.measure(closure_of(place))


def closure_of(place: str) -> Key:
    """The key of the run a closure closes."""
    return f"{place}.closure"


def _step(
    place: str, key: Key, verb: str, before: str, after: str, minutes: Spread, says: str, figures: dict[str, Figure]
) -> Op:
    """One step on a zipper that is out of the garment."""
    return Op(
        id=f"{verb} {key}",
        stage="closure",
        verb=verb,
        places=(place,),
        setup="hand" if verb == "stop" else "table",
        minutes=minutes,
        says=says,
        expects=(Put(f"{place}.kind", "none"), Put(key, before)),
        effects=(Put(key, after),),
        figures=figures,
        materials=(Need("strong thread"),) if verb == "stop" else (),
    )
