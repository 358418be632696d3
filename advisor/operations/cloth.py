"""The whole garment: washed, aired, handed over, copied, strengthened; cords out.

The laws: what will be washed is washed whole, before it is opened, marked, measured or cut, because its
measures change; rust comes out before it meets hot water or a dryer.
"""

from fractions import Fraction

from advisor.core.figure import Figure
from advisor.core.model import Put
from advisor.core.stages import Stage
from advisor.core.work import Need, Op, Setup, Spread
from advisor.figures.exact import inches
from advisor.figures.formula import figure
from advisor.figures.shrinkage import before
from advisor.knowledge.view import View, plain

SHRINK_EXAMPLE = Fraction(3, 100)
"""What plain cotton jersey loses in the wash: source SHR-KEM. It serves as an example, not as a promise."""
CLEANING = ("wash cloth.washed", "dry-clean cloth.washed")
NOT_PARTS = ("cloth", "wearer", "bench", "hardware", "stain")


def wash(view: View) -> Op:
    """Wash it as it will be washed from now on."""
    wanted = plain("wanted", inches(10), "SHR-KEM")
    return _clean(
        view,
        "wash",
        Spread(10, 15, 20),
        "Close all fastenings, turn it inside out, and wash and dry it as it will be washed and dried from now on, by "
        "its label. Wash the new cloth and the notions with it. Whatever is cut before a wash is cut longer: a length "
        "divided by what is left of it, so that cloth that loses 3 in 100 is cut {cut} for {wanted}.",
        (Need("washing as on the label"),),
        {"cut": figure(before, "cut", wanted=wanted, share=SHRINK_EXAMPLE), "wanted": wanted},
    )


def dry_clean(view: View) -> Op:
    """Have it dry-cleaned."""
    return _clean(
        view,
        "dry-clean",
        Spread(15, 30, 45),
        "Have it dry-cleaned before anything else; show the cleaner the stains and say what they are, and what the "
        "cloth is: not every cleaner takes leather or coated cloth, and a coating can stiffen. It meets steam there, "
        "so its measures may change all the same.",
        (Need("a dry cleaner"),),
        {},
    )


def measure_again(view: View) -> Op:
    """Take the measures again after the wash, before anything is opened."""
    place = view.one("cloth")
    return Op(
        id=f"measure {place}.ready",
        stage="open",
        verb="measure",
        places=(place,),
        setup="body",
        minutes=Spread(10, 20, 30),
        says=(
            "Put it on again and take every measure again. Where one has changed, correct the answer before going on: "
            "the numbers below rest on the old ones."
        ),
        expects=(Put(f"{place}.ready", "no"), Put(f"{place}.washed", "yes"), *untouched(view)),
        effects=(Put(f"{place}.ready", "yes"),),
        try_on=True,
        materials=(Need("tape measure"),),
    )


def untouched(view: View) -> tuple[Put, ...]:
    """The states of all parts as they came: what comes before any of them is changed."""
    # Not through view.word: nothing here depends on which word it is, so no question becomes relevant by it.
    model = view.model
    keys = [key for key in sorted(model.states) if model.places[key.partition(".")[0]].role not in NOT_PARTS]
    return tuple(Put(key, model.states[key]) for key in keys)


def hand_over(view: View) -> Op:
    """Give it, unaltered, to who answers for what it protects from."""
    return _whole(
        view, "hand over", "fate", "table", Spread(5, 10, 20), "kept", "handed over",
        "Alter nothing. Take it as it is to the maker or to the safety officer who answers for it, say what is wrong "
        "with it, and let them mend or replace it. For a child's sleepwear: buy the right size.",
    )  # fmt: skip


def copy_off(view: View) -> Op:
    """Use it as the pattern for a new one."""
    return _whole(
        view, "copy", "fate", "table", Spread(60, 120, 240), "kept", "copied",
        "Take photographs, lay it flat on paper without pulling, and mark its seams through with pins set upright; "
        "where even a pin tears it, lay thin paper over it and rub along the seams with a soft pencil. Note every "
        "measure; make the new one from that pattern. The old one stays in a box.",
        materials=(Need("pattern paper"), Need("fine pins"), Need("cloth for the new one")),
    )  # fmt: skip


def cut_stay(view: View) -> Op:
    """Cut the pieces of stay for thin cloth."""
    return _whole(
        view, "cut", "stay", "table", Spread(5, 10, 20), "none", "cut",
        "Cut woven stay for every thin place near a seam that will be opened: past the thin cloth on every side, "
        "corners round, no edge on a crease.",
        materials=(Need("woven stay"),),
    )  # fmt: skip


def put_stay(view: View, how: str) -> Op:
    """Put the stay on: `how` is "fuse" or "sew in"."""
    place = view.one("cloth")
    fusing = how == "fuse"
    return Op(
        id=f"{how} {place}.stay",
        stage="open",
        verb=how,
        places=(place,),
        setup="iron" if fusing else "hand",
        minutes=Spread(10, 20, 30) if fusing else Spread(20, 40, 80),
        says=(
            "Try it on a hidden place first. Fuse the stay to the wrong side with a press cloth: press, lift, press, "
            "never slide. Let it cool flat."
            if fusing
            else (
                "Lay the stay on the wrong side and baste it down by hand with small stitches into sound cloth, loose "
                "enough not to pucker. It is caught in the seam when that is sewn."
            )
        ),
        expects=(Put(f"{place}.stay", "cut"), Put(f"{place}.strength", "thin")),
        effects=(Put(f"{place}.strength", "backed"),),
        needs=(*CLEANING, *rust_first(view)),
        materials=(Need("fusible woven stay" if fusing else "woven stay"),),
        reversible=not fusing,
        check_before="the stay has been tried on a hidden place: it holds, and does not show through" if fusing else "",
    )


def air(view: View) -> Op:
    """Air it and brush off mold outdoors."""
    return _whole(
        view, "air", "store", "table", Spread(15, 30, 60), "damp", "aired",
        "Keep it in a closed bag until it is outdoors. With mask and gloves brush the mold off away from the house, "
        "leave it in sun and wind until it is dry, and wash or clean it next if the cloth still bears it. Against "
        "moths: a closed bag, a week in a freezer.",
        materials=(Need("dust mask"), Need("gloves"), Need("closed bag")),
    )  # fmt: skip


def bag(view: View) -> Op:
    """Bag it unshaken and ask who knows."""
    return _whole(
        view, "bag", "store", "table", Spread(5, 10, 15), "dusty", "bagged",
        "Do not shake, brush, blow or wash it at home. Put it in a closed bag, write on it what it is, wash your "
        "hands, and ask the health authority, the former employer or a laboratory what the dust is before anybody "
        "opens it.",
        materials=(Need("closed bag and label"),),
    )  # fmt: skip


def launder_oil(view: View) -> Op:
    """Have oil washed out by a laundry that takes it."""
    return _whole(
        view, "launder", "store", "table", Spread(10, 15, 30), "oily", "laundered",
        "Spread it out flat outdoors, never in a heap or a closed room: oil-soaked cloth can heat up by itself and "
        "burn. Give it to a laundry that takes oily work clothes and say what the oil is. No dryer and no iron before "
        "that.",
        materials=(Need("a laundry that takes oily clothes"),),
    )  # fmt: skip


def cord_out(view: View, word: str) -> Op:
    """Draw a cord out and shut its channel; `word` says where it is."""
    return _whole(
        view, "take out", "cords", "hand", Spread(10, 15, 30), word, "none",
        "Draw the cord out, sew the ends of its channel shut, and hold the opening with a button, a snap or "
        "hook-and-loop tape instead.",
        materials=(Need("thread to match"), Need("a button, snap or hook-and-loop tape")),
    )  # fmt: skip


def tack_cord(view: View) -> Op:
    """Shorten a waist cord and tack it so that it cannot be pulled to one side."""
    return _whole(
        view, "tack", "cords", "straight", Spread(10, 15, 25), "waist", "tacked",
        "With the channel drawn out to its widest, cut the cord so that no more than 3 in hangs out at either end. "
        "Sew across cord and channel at center back, and take off toggles and knots.",
        materials=(Need("thread to match"),),
    )  # fmt: skip


def rust_first(view: View) -> tuple[str, ...]:
    """The operations that take rust out, where there is any: they come before hot water and iron."""
    return tuple(f"rinse {place}.marks" for place in _hardware(view))


def _clean(
    view: View, verb: str, minutes: Spread, says: str, materials: tuple[Need, ...], figures: dict[str, Figure]
) -> Op:
    place = view.one("cloth")
    off, stay_put = [], []
    for metal in _hardware(view):
        if view.word(f"{metal}.marks") == "rust" or view.word(f"{metal}.state") == "rusted":
            off.append(f"take off {metal}.state")
        else:
            # Sound metal comes off after the wash: a bare hole would fray in it.
            stay_put.append(Put(f"{metal}.state", view.word(f"{metal}.state")))
    return Op(
        id=f"{verb} {place}.washed",
        stage="open",
        verb=verb,
        places=(place,),
        setup="table",
        minutes=minutes,
        says=says,
        expects=(Put(f"{place}.washed", "no"), *untouched(view), *stay_put),
        effects=(Put(f"{place}.washed", "yes"), Put(f"{place}.ready", "no")),
        needs=(*off, *rust_first(view), *_stains_first(view), f"air {place}.store", f"launder {place}.store"),
        reversible=False,
        check_before="the label allows it, and no rust mark is left that could still come out",
        figures=figures,
        materials=materials,
    )


def _whole(
    view: View, verb: str, slot: str, setup: Setup, minutes: Spread, before: str, after: str, says: str,
    materials: tuple[Need, ...] = (), stage: Stage = "open",
) -> Op:  # fmt: skip
    """One step on the whole garment that moves a state on."""
    place = view.one("cloth")
    return Op(
        id=f"{verb} {place}.{slot}",
        stage=stage,
        verb=verb,
        places=(place,),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=(Put(f"{place}.{slot}", before),),
        effects=(Put(f"{place}.{slot}", after),),
        materials=materials,
    )


def _stains_first(view: View) -> tuple[str, ...]:
    """The operations that take stains out: the dryer after the wash would set what is left of them."""
    places = sorted(view.model.places.items())
    return tuple(f"wash out {name}.kind" for name, place in places if place.role == "stain")


def _hardware(view: View) -> list[str]:
    return [name for name, place in sorted(view.model.places.items()) if place.role == "hardware"]
