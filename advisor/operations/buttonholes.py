"""Buttonholes and buttons: worked, cut, tacked, sewn on; old holes made longer or shorter.

The laws: a hole is as long as half the way round its button; under strain the button lies at the end of the
hole nearest the edge; a hole that was cut can be made longer for good, and shorter only with thread.
"""

from dataclasses import replace

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Effect, Key, Put
from advisor.core.work import Need, Op, Spread
from advisor.errors import KnowledgeError
from advisor.figures.buttons import hole_ball, hole_flat_thin, hole_thick, start_floor, start_offered, tacks_between
from advisor.figures.formula import figure, figures
from advisor.knowledge.view import View
from advisor.lengths import on_tape

WHY_SO_LONG = {
    "flat": "the button and 1/8 in, which is right for a flat thin one",
    "thick": "the width of the button and its thickness, because a thick one needs more than the usual 1/8 in",
    "ball": "half the way round, because a ball passes only there; the whole way, as some print, is twice too long",
}


def hole_length(view: View, place: str) -> Figure:
    """The hole that the buttons in hand need, by their form."""
    diameter, form = view.measure(f"{place}.button"), view.word(f"{place}.button_form")
    if form == "thick":
        return figure(hole_thick, "hole", diameter=diameter, thickness=view.measure(f"{place}.button_thickness"))
    return figure(hole_ball if form == "ball" else hole_flat_thin, "hole", diameter=diameter)


def hole_start(view: View, place: str) -> Figure:
    """From the edge to a crosswise hole: half the button and 1/8 in, on the tape."""
    exact = figure(start_offered, "start", diameter=view.measure(f"{place}.button"))
    return replace(exact, value=on_tape(mm_of(exact), view.tape))


def by_hand(view: View) -> bool:
    """Whether the holes have to be worked by hand."""
    return view.has("bench") and view.word(f"{view.one('bench')}.buttonholes") == "no"


def work_holes(view: View, place: str, count: int, kind: str, hidden: bool) -> Op:
    """The holes stitched, not yet cut: crosswise from the edge, or upright in the hidden strip."""
    hole = hole_length(view, place)
    form = view.word(f"{place}.button_form")
    known: dict[str, Figure] = {"hole": hole}
    effects: list[Effect] = [Change(f"{place}.hole", hole), Put(f"{place}.holes", "worked")]
    if hidden:
        where = (
            "upright, down the middle of the strip behind the upper front and through that strip only, each "
            "beginning "
            "1/8 in above its mark"
        )
    else:
        start, floor = hole_start(view, place), figure(start_floor, "floor", diameter=view.measure(f"{place}.button"))
        known |= {"start": start, "floor": floor}
        effects += [
            Change(f"{place}.clear", start),
            Change(f"{place}.clear", times(floor, -1, "half the button lies past the end of the hole")),
        ]
        where = (
            "crosswise, each beginning {start} from the edge: at {floor}, half the button, a button under strain "
            "would "
            "lie flush with the edge, so 1/8 in is added"
        )
    hand = by_hand(view)
    return Op(
        id=f"work {place}.holes",
        stage="closure",
        verb="work",
        places=(place,),
        setup="hand" if hand else "buttonhole",
        minutes=_each(count, 15, 20, 30) if hand else _each(count, 3, 5, 8),
        says=(
            "First work one on scraps of the same layers, interfacing too, and try the button. Then work the "
            f"{count} "
            f"holes {{hole}} long, {where}. {{hole}} is {WHY_SO_LONG[form]}."
            + (
                " Stitch a frame, slit, overcast, and cover with close buttonhole stitch, a bar at each end."
                if hand
                else ""
            )
        ),
        expects=(Put(f"{place}.kind", kind), Put(f"{place}.row", "marked"), Put(f"{place}.holes", "none")),
        effects=tuple(effects),
        figures=known,
        materials=(Need("buttonhole thread" if hand else "thread to match"),),
    )


def cut_holes(view: View, place: str, count: int) -> Op:
    """The holes cut open."""
    return Op(
        id=f"cut {place}.holes",
        stage="closure",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=_each(count, 1, 1, 2),
        says="Pin across both ends of each hole and cut it from the ends toward the middle.",
        expects=(Put(f"{place}.holes", "worked"),),
        effects=(Put(f"{place}.holes", "cut"),),
        reversible=False,
        check_before="the button passes the hole worked on scraps, and all holes stand in line",
    )


def tack_between(view: View, place: str, spots: tuple[Figure, ...]) -> Op:
    """Small tacks between hidden holes, strip to front."""
    tacks = tuple(
        replace(f, id=f"tack_{n}") for n, f in enumerate(figures(tacks_between, "tack", holes=spots), start=1)
    )
    listed = ", ".join(f"{{{tack.id}}}" for tack in tacks)
    return Op(
        id=f"tack {place}.tacks",
        stage="closure",
        verb="tack",
        places=(place,),
        setup="hand",
        minutes=_each(len(tacks), 1, 2, 3),
        says=(
            f"Tack the strip to the front between the holes, a few small stitches each, at {listed} from the top, "
            "with "
            "thread that matches the front: without them the strip stands away and the buttons show."
        ),
        expects=(Put(f"{place}.holes", "cut"), Put(f"{place}.tacks", "none")),
        effects=(Put(f"{place}.tacks", "done"),),
        figures={tack.id: tack for tack in tacks},
        materials=(Need("thread to match the front"),),
    )


def tack_later(view: View, place: str) -> Op:
    """The tacks of a placket that was finished without them."""
    return Op(
        id=f"tack {place}.placket",
        stage="finish",
        verb="tack",
        places=(place,),
        setup="hand",
        minutes=Spread(8, 12, 20),
        says=(
            "Button the front. Tack the hidden strip to the front half way between each two holes, a few stitches each."
        ),
        expects=(Put(f"{place}.kind", "placket"), Put(f"{place}.tacks", "none")),
        effects=(Put(f"{place}.tacks", "done"),),
        materials=(Need("thread to match the front"),),
    )


def sew_buttons(view: View, place: str, count: int, before: str, after: str, fly: bool = False) -> Op:
    """Buttons on, marked through the finished holes: the front closes."""
    hidden = after == "placket"
    where = (
        "1/8 in below the top of the hole"
        if hidden
        else "at the end of the hole nearest the edge, which takes the pull"
    )
    return Op(
        id=f"sew {place}.buttons",
        stage="closure",
        verb="sew",
        places=(place,),
        setup="hand",
        minutes=_each(count, 3, 5, 8),
        says=(
            f"With the garment on, lap the fronts {{overlap}}, level at the waist and the top, and mark the {count} "
            f"buttons through the finished holes, {where}. Sew them through two layers at least with doubled or "
            "quadrupled thread, over a match, and wind the shank: twice by custom, 3 to 5 times by others; thick "
            "cloth "
            "wants more."
        ),
        expects=(
            Put(f"{place}.kind", before),
            Put(f"{place}.holes", "cut"),
            *((Put(f"{place}.fly_zipper", "set"),) if fly else ()),
        ),
        effects=(Put(f"{place}.kind", after), Put(f"{place}.row", "set")),
        try_on=True,
        figures={"overlap": view.measure(f"{place}.overlap")},
        materials=(
            Need("buttons", f"{count} and one to spare, {_form(view, place)}"),
            Need("strong thread"),
        ),
    )


def misfitting_hole(view: View, place: str) -> tuple[Key, Figure]:
    """The hole whose length is not what its button needs, and by how much it is over (negative: under), mm."""
    for join in view.model.holding():
        key, slot = join.a, join.a.partition(".")[2]
        if join.kind == "hole" and join.a.startswith(f"{place}.") and slot in ("hole", "old_hole"):
            off = view.mm(join.a) - join.ratio * view.mm(join.b)
            return key, Figure("off", off, "the hole less what it should be", (join.a, join.b), "case")
    raise KnowledgeError("no buttonholes to measure", where=place, hint="offer this only where there are some")


def lengthen_holes(view: View, place: str) -> Op:
    """Holes that are too short, cut longer and worked again."""
    key, off = misfitting_hole(view, place)
    more = times(off, -1, "longer_by")
    return Op(
        id=f"lengthen {key}",
        stage="closure",
        verb="lengthen",
        places=(place,),
        setup="buttonhole",
        minutes=Spread(20, 40, 70),
        says=(
            "Unpick the bar at the end of each hole away from the edge, cut {longer_by} further by the thread, and "
            "work the new part and a new bar close over the raw edge. The end nearest the edge stays where it is."
        ),
        expects=(Put(f"{place}.kind", view.word(f"{place}.kind")),),
        effects=(Change(key, more),),
        reversible=False,
        check_before="the button passes a hole of the new length worked on scraps",
        figures={"longer_by": more},
        materials=(Need("thread to match"), Need("seam ripper")),
    )


def shorten_holes(view: View, place: str) -> Op:
    """Holes that are too long, closed at one end with a bar."""
    key, off = misfitting_hole(view, place)
    return Op(
        id=f"bar {key}",
        stage="closure",
        verb="bar",
        places=(place,),
        setup="hand",
        minutes=Spread(15, 25, 45),
        says=(
            "Draw the end of each hole away from the edge together over {shorter_by} with small stitches, and work a "
            "bar across it. The end nearest the edge takes the pull and stays as it is."
        ),
        expects=(Put(f"{place}.kind", view.word(f"{place}.kind")),),
        effects=(Change(key, times(off, -1, "closed with a bar")),),
        figures={"shorter_by": replace(off, id="shorter_by")},
        materials=(Need("thread to match"),),
    )


def _form(view: View, place: str) -> str:
    return {"flat": "flat and thin", "thick": "thick or domed", "ball": "ball-shaped"}[
        view.word(f"{place}.button_form")
    ]


def _each(count: int, least: int, likely: int, most: int) -> Spread:
    return Spread(count * least, count * likely, count * most)
