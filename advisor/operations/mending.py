"""Mending where metal sat: metal off and on, stays, patches sewn or glued, darns.

The laws: metal that comes off leaves a hole; a cover reaches from sound cloth to sound cloth, so its size is
counted from the weak cloth and not from the hole.
"""

from advisor.core.figure import Figure, times
from advisor.core.model import Change, Put
from advisor.core.template import Template
from advisor.core.work import Need, Op, Setup, Spread
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.patches import DARN_BEYOND, TURN_UNDER, cut, darn_span, finished
from advisor.knowledge.view import View, plain

MARGIN = inches("3/4")
"""Onto sound cloth on every side of a patch: sources SCHOOLSEW-P (wool), UMA-PATCH (3/4 to 1 in)."""
WEAK_WORDS = ("torn",)
WEAK_CLOTH = ("thin", "perished")
NO_FUSING = ("silk", "coated")


def take_metal_off(view: View, place: str) -> Op:
    """Open or cut the metal and lift it out: holes are left."""
    words = view.words(place)
    return Op(
        id=f"take off {place}.state",
        stage="open",
        verb="take off",
        places=(place,),
        setup="table",
        minutes=Spread(10, 20, 40),
        says=(
            f"Wear safety glasses: cut metal flies. Bend the prongs of {words} open, or nip the post with end cutters "
            "turned away from the face, and lift the parts out both ways. Pull nothing through the cloth; it tears."
        ),
        expects=(Put(f"{place}.state", view.word(f"{place}.state")),),
        effects=(Put(f"{place}.state", "gone"), Put(f"{place}.holes", "open")),
        reversible=False,
        check_before="what takes the place of the metal is decided and to hand, and where it sat is marked",
        materials=(Need("safety glasses"), Need("end cutters or a snap remover")),
    )


def set_metal(view: View, place: str) -> Op:
    """Set new metal of the same kind and size in the old holes, through the backing."""
    return Op(
        id=f"set {place}.state",
        stage="mend",
        verb="set",
        places=(place,),
        setup="table",
        minutes=Spread(10, 20, 40),
        says=(
            "Wear safety glasses. Pierce the patch in the middle of the old hole, smaller than the post, and set new "
            "metal of the same kind and size with its own tool. Try one on scraps of the same thickness first."
        ),
        expects=(Put(f"{place}.holes", "backed"), Put(f"{place}.state", "gone")),
        effects=(Put(f"{place}.holes", "filled"), Put(f"{place}.state", "renewed")),
        reversible=False,
        check_before="one has been set on scraps of the same thickness and holds when pulled",
        materials=(
            Need("new metal of the same kind and size, with its setting tool"),
            Need("safety glasses"),
        ),
    )


def is_weak(view: View, place: str) -> bool:
    """Whether the cloth round the holes needs a stay before a needle goes through it again."""
    return view.word(f"{place}.around") in WEAK_WORDS or _cloth(view, "strength") in WEAK_CLOTH


def stay_around(view: View, place: str) -> Op:
    """Strengthen the cloth round the holes first: fused where an iron may go, sewn in where not."""
    sewn_in = _cloth(view, "kind") in NO_FUSING or _cloth(view, "iron") == "no" or _cloth(view, "surface") == "pile"
    how = (
        "Baste a woven stay behind the weak cloth by hand, with small stitches into sound cloth only"
        if sewn_in
        else "Fuse a woven stay to the wrong side, with a press cloth, at the heat tried on an inside seam"
    )
    expects: tuple[Put, ...] = (Put(f"{place}.around", view.word(f"{place}.around")),)
    effects: tuple[Put, ...] = (Put(f"{place}.around", "stayed"),)
    if not sewn_in:
        expects, effects = (
            (*expects, Put(f"{place}.heat", "none")),
            (*effects, Put(f"{place}.heat", "pressed")),
        )
    return Op(
        id=f"stay {place}.around",
        stage="mend",
        verb="stay",
        places=(place,),
        setup="hand" if sewn_in else "iron",
        minutes=Spread(8, 12, 20),
        says=f"{how}; let it reach past everything thin, and round its corners.",
        expects=expects,
        effects=effects,
        materials=(Need("woven stay" if sewn_in else "fusible woven stay", "a piece for each hole"),),
    )


def patch_size(view: View, place: str) -> Figure:
    """Finished width of a patch: hole, weak cloth on both sides, 3/4 in of sound cloth on both sides."""
    return figure(
        finished,
        "patch",
        hole=view.measure(f"{place}.hole"),
        weak=view.measure(f"{place}.weak"),
        margin=plain("margin", MARGIN, "UMA-PATCH"),
    )


def cut_patch(view: View, place: str, where: str = "hole") -> Op:
    """Cut a patch to lie flat under a hole, no edge turned; `where` says which holes get one."""
    size = patch_size(view, place)
    return Op(
        id=f"cut {place}.patch",
        stage="mend",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(5, 8, 15),
        says=(
            f"For each {where} cut a patch {{patch}} wide and high from washed woven cloth of like weight, its threads "
            "running as the garment's do, the nap the same way. Round the corners. Shift it if an edge would lie on a "
            "crease."
        ),
        expects=(Put(f"{place}.patch", "none"),),
        effects=(Put(f"{place}.patch", "cut"), Change(f"{place}.cover", size)),
        figures={"patch": size},
        materials=(Need("woven cloth of like weight and color, washed", "a piece for each hole"),),
        template=Template("patch", ("patch",)),
    )


def sew_patch_under(view: View, place: str) -> Op:
    """Patch under the hole, hole and patch edges zigzagged down."""
    return _closing(
        view, place, "patched", f"sew {place}.patch", "zigzag", Spread(10, 15, 25),
        "Baste the patch under the hole. Trim loose threads and zigzag the edge of the hole down on it, then the edge "
        "of the patch: medium width, stitches well apart, for a dense zigzag cuts weak cloth like a perforation.",
        Need("thread to match"),
    )  # fmt: skip


def back_hole(view: View, place: str) -> Op:
    """A patch behind the hole, to carry what goes through it."""
    return Op(
        id=f"back {place}.holes",
        stage="mend",
        verb="back",
        places=(place,),
        setup="zigzag",
        minutes=Spread(8, 12, 20),
        says=("Baste the patch behind the hole and zigzag the edge of the hole down on it, stitches well apart."),
        expects=(Put(f"{place}.holes", "open"), Put(f"{place}.patch", "cut"), *_stayed(view, place)),
        effects=(Put(f"{place}.holes", "backed"),),
        materials=(Need("thread to match"),),
    )


def cut_hemmed_patch(view: View, place: str) -> Op:
    """Cut a patch whose edges are turned under: larger by the turn on every side."""
    margin = plain("margin", MARGIN, "UMA-PATCH")
    size = figure(cut, "patch", hole=hole_to_sound(view, place), margin=margin, turn_under=_turn())
    return Op(
        id=f"cut {place}.patch to be hemmed",
        stage="mend",
        verb="cut",
        places=(place,),
        setup="table",
        minutes=Spread(5, 10, 15),
        says=(
            "For each hole cut a patch {patch} wide and high from matching cloth, washed: same threads, same nap, and "
            "a print laid to meet. Shift it if an edge would lie on a crease."
        ),
        expects=(Put(f"{place}.patch", "none"),),
        effects=(Put(f"{place}.patch", "cut"), Change(f"{place}.cover", size)),
        figures={"patch": size},
        materials=(Need("matching cloth, washed", "a piece for each hole"),),
        template=Template("patch", ("patch",)),
    )


def turn_patch(view: View, place: str) -> Op:
    """Turn the edges of the patch under: it finishes smaller by twice the turn."""
    turn = _turn()
    return Op(
        id=f"turn {place}.patch",
        stage="mend",
        verb="turn",
        places=(place,),
        setup="table",
        minutes=Spread(5, 10, 15),
        says="Turn {turn_under} to the wrong side all round the patch, corners first, and baste.",
        expects=(Put(f"{place}.patch", "cut"),),
        effects=(Put(f"{place}.patch", "turned"), Change(f"{place}.cover", times(turn, -2, "turned under"))),
        figures={"turn_under": turn},
        materials=(Need("basting thread"),),
    )


def hem_patch(view: View, place: str) -> Op:
    """Fell a turned patch to the wrong side by hand, and the edge of the hole to the patch."""
    return _closing(
        view, place, "hemmed", f"hem {place}.patch", "hand", Spread(20, 30, 50),
        "Fell the patch to the wrong side by hand. On the right side clip the hole square at the corners, turn its "
        "edge under and hem it down on the patch with small slanting stitches.",
        Need("thread to match"), patch="turned",
    )  # fmt: skip


def darn_hole(view: View, place: str) -> Op:
    """Weave the hole shut, begun and ended in sound cloth."""
    beyond = plain("beyond", DARN_BEYOND, "SCHOOLSEW-D")
    span = figure(darn_span, "darn", tear=hole_to_sound(view, place), beyond=beyond)
    return Op(
        id=f"darn {place}.holes",
        stage="mend",
        verb="darn",
        places=(place,),
        setup="hand",
        minutes=Spread(15, 25, 40),
        says=(
            "Darn each hole with thread drawn from a seam allowance or matched to the cloth: rows {darn} long, begun "
            "and ended {beyond} into sound cloth, first one way, then woven across. Leave small loops at the turns."
        ),
        expects=(Put(f"{place}.holes", "open"),),
        effects=(
            Put(f"{place}.holes", "darned"),
            Change(f"{place}.cover", span),
            Put(f"{place}.press", "due"),
        ),
        figures={"darn": span, "beyond": beyond},
        materials=(Need("darning needle"), Need("thread to match the cloth")),
    )


def press_mend(view: View, place: str, stayed: bool = False) -> Op:
    """Press the mend. `stayed`: an iron has been there already."""
    heat = "pressed" if stayed else "none"
    return Op(
        id=f"press {place}.press",
        stage="mend",
        verb="press",
        places=(place,),
        setup="iron",
        minutes=Spread(3, 5, 8),
        says="Press the mend from the wrong side over a towel, at the heat tried on an inside seam.",
        expects=(Put(f"{place}.press", "due"), Put(f"{place}.heat", heat)),
        effects=(Put(f"{place}.press", "done"), Put(f"{place}.heat", "pressed")),
    )


def fused(op: Op) -> bool:
    """Whether a stay was put on with an iron."""
    return op.setup == "iron"


def _closing(
    view: View,
    place: str,
    word: str,
    id: str,
    setup: Setup,
    minutes: Spread,
    says: str,
    need: Need,
    patch: str = "cut",
) -> Op:
    """A patch sewn on: the hole is shut, pressing is due."""
    return Op(
        id=id,
        stage="mend",
        verb=id.partition(" ")[0],
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=(Put(f"{place}.holes", "open"), Put(f"{place}.patch", patch), *_stayed(view, place)),
        effects=(Put(f"{place}.holes", word), Put(f"{place}.press", "due")),
        materials=(need,),
    )


def hole_to_sound(view: View, place: str) -> Figure:
    """From sound cloth to sound cloth across the hole."""
    hole, weak = view.measure(f"{place}.hole"), view.measure(f"{place}.weak")
    return figure(finished, "hole_and_weak", hole=hole, weak=weak, margin=plain("none", inches(0), "common-practice"))


def _stayed(view: View, place: str) -> tuple[Put, ...]:
    return (Put(f"{place}.around", "stayed"),) if is_weak(view, place) else ()


def _turn() -> Figure:
    return plain("turn_under", TURN_UNDER, "UMA-PATCH")


def _cloth(view: View, slot: str) -> str:
    return view.word(f"{view.one('cloth')}.{slot}") if view.has("cloth") else ""


def glue_patch(view: View, place: str) -> Op:
    """Glue a patch behind a hole in cloth that keeps every needle hole."""
    return Op(
        id=f"glue {place}.patch",
        stage="mend",
        verb="glue",
        places=(place,),
        setup="table",
        minutes=Spread(10, 15, 30),
        says=(
            "Open a window, keep flames away and read the label of the glue. Glue the patch behind the hole with a "
            "flexible glue made for leather, press it flat under a weight, and leave it as long as the label says."
        ),
        expects=(Put(f"{place}.holes", "open"), Put(f"{place}.patch", "cut")),
        effects=(Put(f"{place}.holes", "glued"),),
        reversible=False,
        check_before="the glue has been tried on a scrap or a hidden seam and does not strike through",
        materials=(Need("flexible glue for leather"),),
    )
