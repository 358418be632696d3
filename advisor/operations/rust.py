"""Rust marks: tried on a hidden seam, treated, rinsed; or covered.

The law: heat sets rust, so every treatment must find the place without an iron having been on it, and the
metal must be off, or the acid brings new rust out of it.
"""

from advisor.core.model import Put
from advisor.core.work import Need, Op, Spread
from advisor.knowledge.view import View

GLOVES = (Need("rubber gloves"), Need("white cloth"))


def try_on_seam(view: View, place: str) -> tuple[Op, ...]:
    """The trial on a hidden seam, unless it has been made."""
    if view.word(f"{place}.rust_test") != "untried":
        return ()
    return (
        Op(
            id=f"try {place}.rust_test",
            stage="open",
            verb="try",
            places=(place,),
            setup="table",
            minutes=Spread(5, 10, 15),
            says=(
                "Put a drop of what you will use on the inside of a hidden seam, wait 3 to 5 minutes, rinse, let it "
                "dry and look in daylight. If color or cloth has changed, stop, and cover the marks instead."
            ),
            expects=(Put(f"{place}.rust_test", "untried"),),
            effects=(Put(f"{place}.rust_test", "passed"),),
            materials=GLOVES,
        ),
    )


def soak(view: View, place: str, agent: str, says: str, materials: tuple[Need, ...]) -> Op:
    """Put `agent` ("lemon") on the marks, the metal off, before any heat."""
    tried = view.word(f"{place}.rust_test")
    return Op(
        id=f"soak {place}.marks with {agent}",
        stage="open",
        verb="soak",
        places=(place,),
        setup="table",
        minutes=Spread(10, 20, 40),
        says=says,
        expects=(
            Put(f"{place}.marks", "rust"),
            Put(f"{place}.rust_test", "passed" if tried == "untried" else tried),
            Put(f"{place}.state", metal_off(view, place)),
            Put(f"{place}.heat", "none"),
        ),
        effects=(Put(f"{place}.marks", "soaked"),),
        reversible=False,
        check_before="the trial on a hidden seam is dry and shows no change, and no bleach is near",
        materials=(*GLOVES, *materials),
    )


def rinse(view: View, place: str, says: str) -> Op:
    """Rinse everything out, before any heat."""
    return Op(
        id=f"rinse {place}.marks",
        stage="open",
        verb="rinse",
        places=(place,),
        setup="table",
        minutes=Spread(5, 10, 15),
        says=says,
        expects=(Put(f"{place}.marks", "soaked"), Put(f"{place}.heat", "none")),
        effects=(Put(f"{place}.marks", "treated"),),
    )


def cover_marks(view: View, place: str) -> Op:
    """Sew something over the marks."""
    return Op(
        id=f"cover {place}.marks",
        stage="mend",
        verb="cover",
        places=(place,),
        setup="straight",
        minutes=Spread(15, 25, 40),
        says=(
            "Lay braid, ribbon, a badge or a piece of the cloth over the marks, past them on every side and the same "
            "left and right so that it looks meant. Baste, look from across the room, then sew it down all round."
        ),
        expects=(Put(f"{place}.marks", "rust"),),
        effects=(Put(f"{place}.marks", "covered"),),
        # What lies over the marks lies over the mends too.
        needs=tuple(
            f"{mend} {place}.{slot}"
            for mend, slot in (
                ("sew", "patch"),
                ("hem", "patch"),
                ("glue", "patch"),
                ("darn", "holes"),
                ("topstitch", "flap"),
                ("set", "state"),
            )
        ),
        materials=(Need("braid, ribbon or cloth to cover the marks"), Need("thread to match")),
    )


def metal_off(view: View, place: str) -> str:
    """The word for the metal while the marks are treated: off, though new metal may be set afterward.

    Where it is still in, the treatment is ruled out; whoever does it all the same does it beside the metal.
    """
    word = view.word(f"{place}.state")
    return "gone" if word == "renewed" else word
