"""Mending by renewing: a button and buttonhole where metal sat, a new flap, a mend done over."""

from dataclasses import replace

from advisor.core.figure import Figure, mm_of, times
from advisor.core.model import Change, Key, Put
from advisor.core.work import Need, Op, Setup, Spread
from advisor.figures.buttons import hole_flat_thin
from advisor.figures.formula import figure
from advisor.figures.patches import DARN_BEYOND, darn_span
from advisor.figures.plackets import (
    FLAP_PLACED,
    FLAP_SEWN,
    FLAP_TOPSTITCHED,
    flap_clears_mouth,
    flap_fold_above,
)
from advisor.knowledge.view import View, plain
from advisor.operations.mending import hole_to_sound, patch_size


def button_over(view: View, place: str) -> tuple[Op, ...]:
    """A worked buttonhole where the upper metal sat, a button where the lower sat; both over backing."""
    size = figure(hole_flat_thin, "buttonhole", diameter=view.measure(f"{place}.button"))
    mark = _step(
        place, "mark", "holes", "table", Spread(3, 5, 8), "backed", "marked",
        "Mark a buttonhole {buttonhole} long over each hole of the upper layer, in line with the pull, so that the "
        "hole lies inside it; mark the button through it on the lower layer, over the hole there.",
        figures={"buttonhole": size},
    )  # fmt: skip
    work = Op(
        id=f"work {place}.holes",
        stage="mend",
        verb="work",
        places=(place,),
        setup="buttonhole",
        minutes=Spread(8, 15, 30),
        says=("Work the buttonhole {buttonhole} long through cloth and patch; try one on scraps of the same layers."),
        expects=(Put(f"{place}.holes", "marked"),),
        effects=(Put(f"{place}.holes", "worked"), Change(f"{place}.buttonhole", size)),
        figures={"buttonhole": size},
        materials=(Need("buttonhole thread or thread to match"),),
    )
    slit = Op(
        id=f"cut {place}.holes",
        stage="mend",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(2, 4, 6),
        says="Pin across both ends and cut the buttonhole from each end toward the middle.",
        expects=(Put(f"{place}.holes", "worked"),),
        effects=(Put(f"{place}.holes", "cut"),),
        reversible=False,
        check_before="the button passes the hole worked on scraps, and a pin lies across each end",
    )
    sew = _step(
        place, "sew button", "holes", "hand", Spread(5, 8, 12), "cut", "buttoned",
        "Sew the button over the lower hole, through its patch, with doubled thread and a shank wound twice.",
        materials=(Need("buttons", "one for each pair of metal parts"), Need("strong thread")),
    )  # fmt: skip
    return mark, work, slit, sew


def new_flap(view: View, place: str) -> tuple[Op, ...]:
    """The flap that carried metal off, a new one made and set by two lines that clear the pocket mouth."""
    placed = plain("placed", FLAP_PLACED, "common-practice")
    sewn = plain("sewn", FLAP_SEWN, "common-practice")
    top = plain("topstitched", FLAP_TOPSTITCHED, "common-practice")
    fold = figure(flap_fold_above, "fold", placed=placed, sewn=sewn)
    clear = figure(flap_clears_mouth, "clear", placed=placed, sewn=sewn, topstitched=top)
    line: Key = f"{place}.flap_clear"
    off = _step(
        place, "unpick", "flap", "unpick", Spread(8, 15, 25), "on", "off",
        "Unpick the old flap and keep it whole: it is the pattern. Brush out the threads.",
        materials=(Need("seam ripper"),),
    )  # fmt: skip
    cut_new = _step(
        place, "cut", "flap", "table", Spread(8, 12, 20), "off", "cut",
        "Cut flap and lining from matching cloth by the old flap, seam allowances as it had, the grain the same way.",
        materials=(Need("matching cloth, washed", "two layers of each flap"),),
    )  # fmt: skip
    made = _step(
        place, "make", "flap", "straight", Spread(15, 25, 40), "cut", "made",
        "Sew the flap round its free edges, trim, turn, press and topstitch as the old one was.",
        materials=(Need("thread to match"),),
    )  # fmt: skip
    first = Op(
        id=f"set {place}.flap",
        stage="mend",
        verb="set",
        places=(place,),
        setup="straight",
        minutes=Spread(8, 12, 20),
        says=(
            "Lay the flap face down, pointing up, its raw edge {placed} above the pocket. Sew {sewn} from that edge: "
            "the fold will lie {fold} above the pocket. Keep the pocket itself out of the stitching."
        ),
        expects=(Put(f"{place}.flap", "made"),),
        effects=(Put(f"{place}.flap", "set"), Change(line, placed), Change(line, sewn)),
        figures={"placed": placed, "sewn": sewn, "fold": fold},
    )
    last = Op(
        id=f"topstitch {place}.flap",
        stage="mend",
        verb="topstitch",
        places=(place,),
        setup="straight",
        minutes=Spread(5, 8, 12),
        says=(
            "Fold the flap down and topstitch {topstitched} below the fold: the line runs {clear} above the pocket, "
            "which stays open, and shuts the raw edge in. Put a hand into the pocket before the thread is cut."
        ),
        expects=(Put(f"{place}.flap", "set"), Put(f"{place}.holes", "backed")),
        effects=(
            Put(f"{place}.flap", "renewed"),
            Put(f"{place}.holes", "renewed"),
            Change(line, times(top, -1, "topstitched from the fold")),
            Put(f"{place}.press", "due"),
        ),
        figures={"topstitched": top, "clear": clear},
    )
    return off, cut_new, made, first, last


def _step(
    place: str, verb: str, slot: str, setup: Setup, minutes: Spread, before: str, after: str, says: str,
    figures: dict[str, Figure] | None = None, materials: tuple[Need, ...] = (),
) -> Op:  # fmt: skip
    """One step that only moves a state on."""
    return Op(
        id=f"{verb} {place}.{slot}",
        stage="mend",
        verb=verb,
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=(Put(f"{place}.{slot}", before),),
        effects=(Put(f"{place}.{slot}", after),),
        figures=figures or {},
        materials=materials,
    )


def resize(view: View, problem: str, place: str) -> Op:
    """Do a mend of the wrong size over: what it measures becomes what it must measure."""
    slot, wanted = {
        "cover_misfit": ("cover", _cover_wanted),
        "flap_misset": ("flap_clear", _clear_wanted),
        "buttonhole_misfit": ("buttonhole", _buttonhole_wanted),
    }[problem]
    key = f"{place}.{slot}"
    right = wanted(view, place)
    by = Figure("difference", mm_of(right) - view.mm(key), "what it must be less what it is", (right.id, key), "case")
    return Op(
        id=f"do over {key}",
        stage="finish",
        verb="do over",
        places=(place,),
        setup="unpick",
        minutes=Spread(15, 25, 40),
        says=f"Unpick the mend where {view.words(place)} sat and do it again, {{wanted}} this time.",
        effects=(Change(key, by),),
        figures={"wanted": right},
    )


def _cover_wanted(view: View, place: str) -> Figure:
    if view.word(f"{place}.holes") == "darned":
        return figure(
            darn_span,
            "wanted",
            tear=hole_to_sound(view, place),
            beyond=plain("beyond", DARN_BEYOND, "SCHOOLSEW-D"),
        )
    return replace(patch_size(view, place), id="wanted")


def _clear_wanted(view: View, place: str) -> Figure:
    return figure(flap_clears_mouth, "wanted", placed=FLAP_PLACED, sewn=FLAP_SEWN, topstitched=FLAP_TOPSTITCHED)


def _buttonhole_wanted(view: View, place: str) -> Figure:
    return figure(hole_flat_thin, "wanted", diameter=view.measure(f"{place}.button"))
