"""Taking in and letting out the part below a waist seam at its center-back and side seams.

The laws: what seams take in comes off the edge they open on; a center-back seam that runs out brings the back
pockets together by what it takes at their level, half from each side; a side seam leaves the gap between them
alone. Darts are in darts.py, elastic, tabs and recutting in waist_drawn.py.
"""

from dataclasses import replace

from advisor.core.figure import Figure, mm_of, taken, times
from advisor.core.model import Change, Key, Mm, Put
from advisor.core.template import Template
from advisor.core.work import Need, Op, Spread
from advisor.figures import fitting, seams
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.letout import inset_cut
from advisor.knowledge.view import View, plain
from advisor.operations.bands import has_band, open_band, press_band, sew_band
from advisor.operations.marks import parts, seam_allowance
from advisor.operations.seams import open_seam, press
from advisor.operations.waist import open_waist, press_waist, sew_waist

SEAM, BAND, POCKETS, LEGS = "waist_seam", "waistband", "back_pockets", "leg_end"
UPPER = "upper_part"
SIDES = ("left", "right")
WORN_FIRST = inches("1 1/2")
"""More than this is worn before it is sewn for good: common practice, no source."""


def with_waist_open(view: View, ops: tuple[Op, ...]) -> tuple[Op, ...]:
    """`ops` between opening the waist and sewing it again: the seam to a part above, else the one to a band."""
    if view.has(SEAM):
        return (open_waist(view), *ops, sew_waist(view), press_waist(view))
    if has_band(view):
        band = view.one(BAND)
        return (open_band(view, band), *ops, sew_band(view, band), press_band(view, band))
    return ops


def waist_open(view: View) -> tuple[Put, ...]:
    """What work on the edge of the lower part expects: the seam above it open, where there is one."""
    if view.has(SEAM):
        return (Put(f"{view.one(SEAM)}.seam", "open"),)
    return (Put(f"{view.one(BAND)}.seam", "open"),) if has_band(view) else ()


def open_center_back(view: View, lower: str) -> Op:
    """Unpick the center-back seam from the waist down."""
    felled = view.word(f"{lower}.center_seam") == "felled"
    minutes = Spread(20, 30, 45) if felled else Spread(8, 12, 20)
    words = f"the center-back seam of {view.words(lower)} from the waist down"
    return _after_opening(view, open_seam(f"{lower}.center_back", words, minutes))


def run_out_of(view: View, lower: str, each_side: Figure) -> Figure | None:
    """How far down a seam runs out whose line lies `each_side` inside; None where it is taken in all the way."""
    loose = view.word(f"{lower}.loose_to")
    if loose == "hip":
        return None
    if loose == "high_hip":
        return plain("run_out", fitting.HIP_DEPTH, "HTS")
    return figure(fitting.run_out, "run_out", each_side=each_side)


def center_run_out(view: View, lower: str, total: Figure) -> Figure | None:
    """The same for a center-back seam that takes `total`."""
    return run_out_of(view, lower, figure(seams.each_side, "each_side", total=total))


def loss_at_pockets(total: Mm, below: Mm, loose_to: str) -> Mm:
    """What a center-back seam taking `total` takes `below` the waist, by where the looseness stops, mm."""
    if loose_to == "hip":
        return total
    length = fitting.HIP_DEPTH if loose_to == "high_hip" else fitting.run_out(total / 2)
    return seams.loss_at(total, below, length)


def pocket_loss(view: View, total: Figure, run_out: Figure | None) -> Figure:
    """What the gap between the back pockets loses (or gains, let out) at their level."""
    if run_out is None:
        return taken("loss_at_pockets", mm_of(total), total.id, "common-practice")
    below = view.measure(f"{view.one(POCKETS)}.below")
    return figure(seams.loss_at, "loss_at_pockets", total=total, depth=below, length=run_out)


def baste_center_back(view: View, lower: str, total: Figure, run_out: Figure | None, way: str) -> Op:
    """Draw the new line (`way`: "inside" or "outside" the old one), baste it, try it moving."""
    halves = parts(total, 2, view.tape, "layer")
    figures = {"total": total, "layer_1": halves[0], "layer_2": halves[1]}
    on_each = "{layer_1}" if halves[0].value == halves[1].value else "{layer_1} on one layer and {layer_2} on the other"
    if run_out is None:
        below = "run into its curve before the crotch" if view.has(LEGS) else "run into it again below"
        ends = f"keep that far from the old seam down past the full seat and {below}"
    else:
        figures["run_out"] = run_out
        ends = "run out to nothing {run_out} down, in a line without a bend"
    return Op(
        id=f"baste {lower}.center_back",
        stage="girth",
        verb="baste",
        places=(lower,),
        setup="body",
        minutes=Spread(15, 20, 30),
        says=(
            f"At the waist draw the new line {on_each} {way} the old one, on each layer: {{total}} altogether. From "
            f"there {ends}. Baste, {tried(view)}, sit, bend and climb a stair. If it strains seated, unpick it and "
            "give the amount anew, 1/2 in less."
        ),
        expects=(Put(f"{lower}.center_back", "open"), *waist_open(view)),
        effects=(Put(f"{lower}.center_back", "basted"),),
        try_on=True,
        figures=figures,
        materials=(Need("basting thread"), Need("marking chalk")),
        template=_line_template(run_out, halves),
    )


def take_in_center_back(
    view: View, lower: str, total: Figure, run_out: Figure | None, felled: bool, alone: bool = True
) -> Op:
    """Sew the basted line: the edge loses `total`, the back pockets come together.

    alone: no other seam takes a part of what goes.
    """
    finish = (
        "Trim one allowance, fold the other over it and fell it flat as it was, with two rows of topstitching"
        if felled
        else "Finish the edges; trim only after a day of wear and a wash"
    )
    return Op(
        id=f"take in {lower}.center_back",
        stage="girth",
        verb="take in",
        places=(lower,),
        setup="straight",
        minutes=Spread(25, 35, 50) if felled else Spread(12, 18, 25),
        says=(
            f"Sew the new line from the bottom up, twice over the seat.{_worn_first(view, total)} {finish}."
            f"{_told_pockets(view)}"
        ),
        expects=(Put(f"{lower}.center_back", "basted"), *waist_open(view)),
        effects=(
            Change(f"{lower}.edge", times(total, -1, "taken in")),
            *_pocket_changes(view, total, run_out, -1),
            Put(f"{lower}.center_back", "taken in"),
            Put(f"{lower}.press", "due"),
            *(stands_over_behind(view, lower, total) if alone else ()),
        ),
        reversible=not felled,
        check_before="it has been worn basted and sat in: an allowance trimmed for felling is gone" if felled else "",
        figures={"total": total, **_pocket_figures(view, total, run_out)},
        materials=(Need("thread to match"),),
    )


def let_out_center_back(view: View, lower: str, total: Figure, run_out: Figure | None, stays: Figure) -> Op:
    """Sew the basted line outside the old one: the edge gains `total`, the back pockets move apart."""
    return Op(
        id=f"let out {lower}.center_back",
        stage="girth",
        verb="let out",
        places=(lower,),
        setup="straight",
        minutes=Spread(12, 18, 25),
        says=(
            "Sew the new line, twice over the seat; {stays} of allowance stays on each side, so finish its edge. "
            "Steam the old line, where the label allows it, and brush it."
        ),
        expects=(Put(f"{lower}.center_back", "basted"), *waist_open(view)),
        effects=(
            Change(f"{lower}.edge", times(total, 1, "let out")),
            *_pocket_changes(view, total, run_out, 1),
            Put(f"{lower}.center_back", "sewn"),
            Put(f"{lower}.press", "due"),
        ),
        figures={"total": total, "stays": stays},
        materials=(Need("thread to match"),),
    )


def press_seams(view: View, lower: str) -> Op:
    """Press new seams of the lower part."""
    return press(f"{lower}.press", f"the new seams of {view.words(lower)}", Spread(5, 8, 12), "girth")


def open_sides(view: View, lower: str) -> Op:
    """Unpick both side seams near the waist."""
    words = f"both side seams of {view.words(lower)} from the waist down"
    return _after_opening(view, open_seam(f"{lower}.sides", words, Spread(15, 20, 30)))


def _line_template(run_out: Figure | None, layers: tuple[Figure, ...]) -> Template | None:
    """The new seam line to draw; none where it runs on, or where it is another line on each layer."""
    if run_out is None or len({layer.value for layer in layers}) > 1:
        return None
    return Template("run_out", (layers[0].id, run_out.id))


def baste_sides(view: View, lower: str, total: Figure, takes: tuple[Figure, ...]) -> Op:
    """Baste both side seams further in."""
    layers = {f"layer_{side}": figure(seams.each_side, f"layer_{side}", total=t) for side, t in _by_side(takes)}
    run_out = run_out_of(view, lower, figure(seams.per_layer, "each_layer", total=total, seams=len(SIDES)))
    ends = "keep it down to the full hip" if run_out is None else "run out to nothing {run_out} down"
    if run_out is not None:
        layers["run_out"] = run_out
    return Op(
        id=f"baste {lower}.sides",
        stage="girth",
        verb="baste",
        places=(lower,),
        setup="body",
        minutes=Spread(20, 30, 40),
        says=(
            "At the waist the left side seam takes {left}, so its line lies {layer_left} inside the old one on each "
            f"layer; the right one takes {{right}}, {{layer_right}} on each layer. From there {ends}. Baste both, "
            f"{tried(view)}, sit, bend and climb a stair."
        ),
        expects=(Put(f"{lower}.sides", "open"), *waist_open(view)),
        effects=(Put(f"{lower}.sides", "basted"),),
        try_on=True,
        figures={"total": total, **dict(_by_side(takes)), **layers},
        materials=(Need("basting thread"), Need("marking chalk")),
        template=_line_template(run_out, tuple(layers[f"layer_{side}"] for side in SIDES)),
    )


def take_in_sides(view: View, lower: str, takes: tuple[Figure, ...]) -> tuple[Op, ...]:
    """Sew each basted side seam: the edge loses its part of the total."""
    return tuple(
        Op(
            id=f"take in {lower}.{side}_side",
            stage="girth",
            verb="take in",
            places=(lower,),
            setup="straight",
            minutes=Spread(12, 18, 25),
            says=f"Sew the {side} side seam on the basted line, from the bottom up: it takes {{take}} altogether.",
            expects=(Put(f"{lower}.sides", "basted"), *waist_open(view)),
            effects=(Change(f"{lower}.edge", times(take, -1, f"taken in {side}")), Put(f"{lower}.press", "due")),
            figures={"take": take},
            materials=(Need("thread to match"),),
        )
        for side, take in _by_side(takes)
    )


def finish_sides(view: View, lower: str) -> Op:
    """Finish and press both side seams."""
    return Op(
        id=f"finish {lower}.sides",
        stage="girth",
        verb="finish",
        places=(lower,),
        setup="iron",
        minutes=Spread(10, 15, 20),
        says=(
            "Take the basting out, finish the edges of both side seams and press them as they were, over a rounded "
            "cushion at the hip. Trim only after a day of wear and a wash."
        ),
        expects=(Put(f"{lower}.sides", "basted"), Put(f"{lower}.press", "due")),
        effects=(Put(f"{lower}.sides", "sewn"), Put(f"{lower}.press", "done")),
    )


def cut_strips(view: View, lower: str, total: Figure) -> Op:
    """Cut two strips for the side seams."""
    allowance = seam_allowance(view.tape)
    cut = figure(inset_cut, "strip_cut", wanting=total, insets=2, allowance=allowance)
    return Op(
        id=f"cut {lower}.strips",
        stage="girth",
        verb="cut",
        places=(lower,),
        setup="table",
        minutes=Spread(10, 15, 25),
        says=(
            "Cut two strips {strip_cut} wide at the waist, {seam_allowance} of that for each seam, running out to seam "
            "allowances alone at the hip, {hip} down. Grain and nap as in the cloth they meet."
        ),
        expects=(Put(f"{lower}.strips", "none"),),
        effects=(Put(f"{lower}.strips", "cut"),),
        figures={
            "strip_cut": cut,
            "seam_allowance": allowance,
            "hip": plain("hip", fitting.HIP_DEPTH, "HTS"),
        },
        materials=(Need("matching cloth, washed", "two strips for the side seams"),),
    )


def baste_strips(view: View, lower: str) -> Op:
    """Baste the strips into the opened side seams."""
    return Op(
        id=f"baste {lower}.strips",
        stage="girth",
        verb="baste",
        places=(lower,),
        setup="body",
        minutes=Spread(20, 30, 45),
        says=f"Baste a strip into each side seam, point down. Then {tried(view)}, sit, bend and climb a stair.",
        expects=(Put(f"{lower}.sides", "open"), Put(f"{lower}.strips", "cut"), *waist_open(view)),
        effects=(Put(f"{lower}.sides", "basted"),),
        try_on=True,
        materials=(Need("basting thread"),),
    )


def set_strips(view: View, lower: str, gains: tuple[Figure, ...]) -> tuple[Op, ...]:
    """Sew each strip in: the edge gains its finished width."""
    return tuple(
        Op(
            id=f"set {lower}.{side}_strip",
            stage="girth",
            verb="set",
            places=(lower,),
            setup="straight",
            minutes=Spread(20, 30, 45),
            says=f"Sew the {side} strip in along both its seams; at the waist it must lie {{gain}} wide between them.",
            expects=(Put(f"{lower}.sides", "basted"), *waist_open(view)),
            effects=(Change(f"{lower}.edge", times(gain, 1, f"let in {side}")), Put(f"{lower}.press", "due")),
            figures={"gain": gain},
            materials=(Need("thread to match"),),
        )
        for side, gain in _by_side(gains)
    )


def _after_opening(view: View, op: Op) -> Op:
    return replace(op, needs=tuple(f"open {put.key}" for put in waist_open(view)))


def _by_side(figures: tuple[Figure, ...]) -> tuple[tuple[str, Figure], ...]:
    return tuple(zip(SIDES, figures, strict=True))


def _pocket_changes(view: View, total: Figure, run_out: Figure | None, sign: int) -> tuple[Change, ...]:
    if not view.has(POCKETS):
        return ()
    loss = pocket_loss(view, total, run_out)
    half = figure(seams.each_side, "half_of_loss", total=loss)
    pockets: Key = view.one(POCKETS)
    return (
        Change(f"{pockets}.gap", times(loss, sign, "gap between pockets")),
        # Each pocket comes nearer the seam by half: kept apart from the gap, so that one checks the other.
        Change(f"{pockets}.to_seam", times(half, 2 * sign, "both pockets to the seam")),
    )


def _pocket_figures(view: View, total: Figure, run_out: Figure | None) -> dict[str, Figure]:
    if not view.has(POCKETS):
        return {}
    loss = pocket_loss(view, total, run_out)
    gap = view.measure(f"{view.one(POCKETS)}.gap")
    left = Figure(
        "gap_left", mm_of(gap) - mm_of(loss), "gap less what the seam takes there", (gap.id, loss.id), "common-practice"
    )
    return {"loss_at_pockets": loss, "gap_left": left}


def stands_over_behind(view: View, lower: str, total: Figure) -> tuple[Put, ...]:
    """What is taken out of the back of the lower part alone leaves the part above wider at the back alone.

    Side seams meet side seams: the front quarters agree as they did. Where more than that was over all round
    already (a waist marked higher up), it stays spread.
    """
    if not view.has(SEAM) or not view.has(UPPER):
        return ()
    upper = view.one(UPPER)
    already = view.mm(f"{upper}.edge") - view.mm(f"{lower}.edge")
    return (Put(f"{upper}.spare_at", "back"),) if mm_of(total) > already else ()


def tried(view: View) -> str:
    """How the lower part is tried on while its seam to a part above is open."""
    if view.has(SEAM) and view.has(UPPER):
        return f"pin it to {view.words(view.one(UPPER))} at the seams, try on"
    return "try on"


def _worn_first(view: View, total: Figure) -> str:
    if mm_of(total) <= WORN_FIRST:
        return ""
    if view.has(SEAM):
        return " So much is sewn with long stitches first, and for good after an hour's wear with the waist basted."
    return " Of so much sew half to two thirds first, wear it for an hour, then sew the rest."


def _told_pockets(view: View) -> str:
    if not view.has(POCKETS) or view.word(f"{view.one(POCKETS)}.there") != "there":
        return ""
    return (
        f" Afterwards {view.words(view.one(POCKETS))} must stand {{gap_left}} apart at their tops, as far on one side "
        "of the seam as on the other."
    )
