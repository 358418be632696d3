"""Ends of sleeves and legs: the hem opened, marked, cut, turned and sewn; cuffs, facings and bands; tucks.

The law: an end is as long as its cloth less what is turned up. Opening a hem lets its whole turn-up hang down,
cutting takes the strip off, turning takes the allowance up; a tuck of depth d takes 2 d. Both ends are done alike.
"""

from collections.abc import Mapping

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Put
from advisor.core.template import Template
from advisor.core.work import Need, Op, Setup, Spread
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.hems import mirror_each_edge, turn_up_difference
from advisor.knowledge.view import View, plain
from advisor.lengths import show

SLOPE_RUN = inches("2")
"""How far above the new hem the second round is measured."""
EDGES = 4
"""Cut edges of the hem allowance: two seams, two layers each."""
SEAM = inches("1/2")
"""Seam allowance of a band or a strip: common practice, no source."""

PAIR = {"sleeve_end": "sleeves", "leg_end": "legs"}
"""Ends a garment has two of; any other end there is one of."""

CHECK = (
    "what lies above is settled, the cloth has been washed as it will be washed from now on, left and right, or the "
    "edge all round, are measured, and the line was tried on the body"
)


def both(view: View, place: str) -> str:
    """The ends a place stands for: "both sleeves", or the place itself where there is one."""
    role = view.model.places[place].role
    return f"both {PAIR[role]}" if role in PAIR else view.words(place)


def is_pair(view: View, place: str) -> bool:
    """Whether the garment has two of it."""
    return view.model.places[place].role in PAIR


def differing(view: View, place: str) -> bool:
    """Whether left and right ask for different amounts."""
    return is_pair(view, place) and view.word(f"{place}.sides") in ("differ", "apart")


def for_each(view: View, place: str) -> str:
    """How an instruction to cut for the ends begins."""
    return "For each side cut" if is_pair(view, place) else "Cut"


def leveled(view: View, place: str) -> tuple[Put, ...]:
    """An edge marked or set anew on the body hangs level from then on, where that is asked of it."""
    return (Put(f"{place}.level", "level"),) if f"{place}.level" in view.model.states else ()


def settled(view: View, place: str, word: str, becomes: str) -> tuple[Put, ...]:
    """An edge found `word` (fallen, frayed) is settled with the work that is done on it anyway."""
    key = f"{place}.edge"
    return (Put(key, becomes),) if view.model.states.get(key) == word else ()


def open_hem(view: View, place: str) -> Op:
    """Both hems unpicked and pressed flat: the turn-up hangs down."""
    down = view.measure(f"{place}.turn_up")
    comes = "press it flat: {turn_up} of cloth comes down" if mm_of(down) else "press the end flat"
    return Op(
        id=f"open {place}.hem",
        stage="hem",
        verb="unpick",
        places=(place,),
        setup="unpick",
        minutes=Spread(8, 15, 25),
        says=(
            f"Unpick the hem of {both(view, place)} and {comes}. Let the old edge show as a crease; it is what the "
            "new line is measured from. Look whether it is worn through or faded."
        ),
        expects=(Put(f"{place}.hem", "sewn"),),
        effects=(Change(f"{place}.length", down), Put(f"{place}.hem", "open")),
        figures={"turn_up": down},
        materials=(Need("seam ripper"),),
    )


def mark_line(view: View, place: str, by: Figure, which: str) -> Op:
    """The new edge marked on the body, from the old one: `which` says above or below."""
    if differing(view, place):
        level = "so on the side you gave; on the other go by its label, if it has one. Mark every 2 to 3 in round."
    elif is_pair(view, place):
        level = (
            "mark every 2 to 3 in round. Take it off and lay them together at the inner seam: they must come out alike."
        )
    else:
        level = (
            "level from the floor, in the shoes worn with it, she standing still and you going round her; alone, turn "
            "against a table edge and chalk there. Mark every 2 to 3 in."
        )
    return Op(
        id=f"mark {place}.hem",
        stage="hem",
        verb="mark",
        places=(place,),
        setup="body",
        minutes=Spread(5, 10, 20),
        says=(
            f"{_hang(view, place)}With the garment on{_shod(view, place)}, pin the new edge {{by}} {which} the old one "
            f"on {both(view, place)}: {level}"
        ),
        expects=(Put(f"{place}.hem", "open"),),
        effects=(Put(f"{place}.hem", "marked"), *leveled(view, place)),
        needs=(f"measure {place}.sides",),
        figures={"by": by},
        try_on=True,
    )


def mark_level(view: View, place: str) -> Op:
    """The edge marked at one height from the floor."""
    return Op(
        id=f"mark {place}.hem",
        stage="hem",
        verb="mark",
        places=(place,),
        setup="body",
        minutes=Spread(10, 20, 30),
        says=(
            "Let it hang first where it flares or is cut on the bias, 24 hours by two sources, 48 by a third. Then, "
            "with the garment on and the shoes worn with it, mark the edge at one height from the floor every 2 to 3 "
            "in, she standing still and you going round her."
        ),
        expects=(Put(f"{place}.hem", "open"),),
        effects=(Put(f"{place}.hem", "marked"), Put(f"{place}.level", "level")),
        try_on=True,
    )


def _hang(view: View, place: str) -> str:
    """Only cloth that drops must hang before it is marked."""
    drops = view.has("cloth") and view.word(f"{view.one('cloth')}.surface") == "slippery"
    if not drops and view.mm(f"{place}.round") <= view.mm(f"{place}.round_above"):
        return ""
    return "Bias and flared ends drop: let it hang first, 24 hours by two sources, 48 by a third. "


def _shod(view: View, place: str) -> str:
    """A leg is measured down to the shoe."""
    return " and the shoes worn with it" if view.model.places[place].role == "leg_end" else ""


def cut_end(view: View, place: str, off: Figure, how: str, figures: Mapping[str, Figure], after: str = "marked") -> Op:
    """The strip `off` cut off both ends; `how` says from where. `after` is the state of the hem before."""
    return Op(
        id=f"cut {place}.hem",
        stage="hem",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(5, 8, 15),
        says=f"{_laid(view, place)} cut {{off}} off {how}{_by_the_line(view, place, after)}",
        expects=(Put(f"{place}.hem", after),),
        effects=(
            Change(f"{place}.length", times(off, -1, "cut_off")),
            Put(f"{place}.hem", "raw"),
            *settled(view, place, "frayed", "cut away"),
        ),
        reversible=False,
        check_before=CHECK,
        figures={"off": off, **figures},
    )


def _by_the_line(view: View, place: str, after: str) -> str:
    """An edge that hung unevenly and was marked level loses more in some places than in others."""
    if after != "marked" or f"{place}.level" not in view.model.states or view.word(f"{place}.level") != "drops":
        return ""
    return (
        " It hung lower in places: there more falls away. Go by the new line all round, and by the old edge nowhere."
    )


def _laid(view: View, place: str) -> str:
    if differing(view, place):
        return f"Take {both(view, place)} one by one, each by its own line; on the side you gave"
    if is_pair(view, place):
        return f"Lay {both(view, place)} on each other, seams in line, and"
    return f"Lay {view.words(place)} flat, side seams on each other, and"


def turn_up(
    view: View, place: str, allowance: Figure, depth: Figure, how: str, figures: Mapping[str, Figure], *, cut: bool
) -> Op:
    """The allowance turned up and pressed; `how` tells the turns. `cut` says whether a strip was cut off before."""
    slope_words, slope = sloping(view, place, depth)
    return Op(
        id=f"turn {place}.hem",
        stage="hem",
        verb="turn",
        places=(place,),
        setup="iron",
        minutes=Spread(8, 12, 20),
        says=f"{slope_words}{how} Trim the seam allowances inside the hem to 1/4 in. Press, pin and baste; clip "
        "leather or coated cloth instead, for every hole stays.",
        expects=(Put(f"{place}.hem", "raw" if cut else "marked"),),
        effects=(Change(f"{place}.length", times(allowance, -1, "turned_up")), Put(f"{place}.hem", "turned")),
        figures={"allowance": allowance, **figures, **slope},
        try_on=True,
        template=Template("hem_card", tuple(n for n in ("under", "fold", "depth") if n in figures) or ("allowance",)),
    )


def sloping(view: View, place: str, depth: Figure) -> tuple[str, dict[str, Figure]]:
    """What to do where the turned-up edge is not as long as the place it meets, with its figures."""
    at, above = view.mm(f"{place}.round"), view.mm(f"{place}.round_above")
    if at == above:
        return "", {}
    change = Figure(
        "change", abs(at - above), "the two rounds apart", (f"{place}.round", f"{place}.round_above"), "case"
    )
    apart = figure(turn_up_difference, "apart", depth=depth, change=change, run=SLOPE_RUN)
    edge = figure(mirror_each_edge, "each_edge", difference=apart, edges=EDGES)
    if at > above:
        words = (
            "The end flares: turned up, the edge is {apart} longer round than where it lands. Run an ease row 1/4 in "
            "below where the upper edge of the hem will be, draw it up by that, and shrink the fullness with steam "
            "where the label allows it. "
        )
    else:
        words = (
            "The end tapers: turned up, the edge is {apart} too short for where it lands. First open the seams in the "
            "allowance and sew them again slanting outward, a mirror of what lies above: {each_edge} out at each of "
            "the 4 edges. "
        )
    return words, {"apart": apart, "each_edge": edge}


def sew_hem(view: View, place: str, how: str, setup: Setup, minutes: Spread) -> Op:
    """The turned hem, facing or cuff sewn for good."""
    return Op(
        id=f"sew {place}.hem",
        stage="hem",
        verb="sew",
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=f"{how} Press last, on the wrong side.",
        expects=(Put(f"{place}.hem", "turned"),),
        effects=(Put(f"{place}.hem", "sewn"), *settled(view, place, "down", "sewn again")),
        materials=(Need("thread to match"),),
    )


def cut_facing(view: View, place: str, long: Figure, wide: Figure, size: str) -> Op:
    """A strip to face the end."""
    return Op(
        id=f"cut facing {place}.strip",
        stage="hem",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(5, 10, 15),
        says=(
            f"{for_each(view, place)} a strip {{long}} long and {{wide}} wide from thin firm cloth, on the grain the "
            "garment has. Old manuals face wide skirts with bias; for trousers the trade warns against it. Where the "
            "end slants, cut the strip to the shape of the end itself."
        ),
        expects=(Put(f"{place}.strip", "none"),),
        effects=(Put(f"{place}.strip", "cut"),),
        figures={"long": long, "wide": wide},
        materials=(Need("thin firm cloth or hem facing", strips(view, place, size)),),
    )


def sew_facing(view: View, place: str, seam: Figure, *, cut: bool) -> Op:
    """The strip sewn to the raw edge and turned in."""
    return Op(
        id=f"face {place}.hem",
        stage="hem",
        verb="face",
        places=(place,),
        setup="straight",
        minutes=Spread(15, 25, 40),
        says=(
            "Join the strip into a ring that fits the end, its seam on a seam of the garment. Sew it to the raw edge "
            "with a seam of {seam}, right sides together; turn it in so that a thread or two of the garment rolls "
            "under; baste the fold."
        ),
        expects=(Put(f"{place}.hem", "raw" if cut else "marked"), Put(f"{place}.strip", "cut")),
        effects=(Change(f"{place}.length", times(seam, -1, "seamed_in")), Put(f"{place}.hem", "turned")),
        figures={"seam": seam},
        try_on=True,
        materials=(Need("thread to match"),),
    )


def pin_tuck(view: View, place: str, depth: Figure) -> Op:
    """A fold pinned above the edge, on the body."""
    alike = ", alike on both" if is_pair(view, place) else ", level all round"
    if differing(view, place):
        alike = "; on the other by its label, if it has one"
    return Op(
        id=f"pin {place}.tuck",
        stage="hem",
        verb="pin",
        places=(place,),
        setup="body",
        minutes=Spread(5, 8, 15),
        says=(
            f"With the garment on, pin a fold all round {view.words(place)} that takes up {{taken}}, {{depth}} from "
            f"fold to stitching, its stitching to lie just above the old hem stitching{alike}."
        ),
        expects=(Put(f"{place}.tuck", "none"), Put(f"{place}.hem", "sewn")),
        effects=(Put(f"{place}.tuck", "pinned"),),
        needs=(f"measure {place}.sides",),
        figures={"depth": depth, "taken": times(depth, 2, "taken")},
        try_on=True,
    )


def sew_tuck(view: View, place: str, depth: Figure) -> Op:
    """The fold sewn through and pressed up inside."""
    return Op(
        id=f"sew {place}.tuck",
        stage="hem",
        verb="sew",
        places=(place,),
        setup="straight",
        minutes=Spread(12, 18, 30),
        says=(
            "Sew round, line on line, close above the old hem, so that the seam sinks in behind it: {taken} is taken "
            "up. Press the fold upward inside and catch it to the seams by hand. Where it is too bulky trim it to 1/2 "
            "in and overcast it, but then it can no longer be let down."
        ),
        expects=(Put(f"{place}.tuck", "pinned"),),
        effects=(Change(f"{place}.length", times(depth, -2, "taken")), Put(f"{place}.tuck", "sewn")),
        figures={"depth": depth, "taken": times(depth, 2, "taken")},
        materials=(Need("thread to match"),),
    )


def measure_apart(view: View, place: str) -> Op:
    """Left and right marked each for itself."""
    return Op(
        id=f"measure {place}.sides",
        stage="hem",
        verb="measure",
        places=(place,),
        setup="body",
        minutes=Spread(5, 8, 15),
        says=(
            f"With the garment on and hanging level, measure left and right of {view.words(place)} each for itself "
            "and pin a label on each. The amounts given are for the side you gave; on the other add or take off the "
            "difference."
        ),
        expects=(Put(f"{place}.sides", "differ"),),
        effects=(Put(f"{place}.sides", "apart"),),
        try_on=True,
    )


def strips(view: View, place: str, size: str) -> str:
    """How many strips of a size an end takes, in words."""
    return f"2 strips {size}" if is_pair(view, place) else f"a strip {size}"


def strip_size(long: Figure, wide: Figure, view: View) -> str:
    """A strip in words, for the list of materials."""
    return f"{show(mm_of(long), view.tape)} by {show(mm_of(wide), view.tape)}"


def turn_of(id: str, text: str, source: str) -> Figure:
    """A fold or allowance fixed by the trade, written as on a tape."""
    return plain(id, inches(text), source)
