"""Belt loops and the label of a waistband: off before the band is cut or seamed, and on again when it is sewn."""

from advisor.core.model import Put
from advisor.core.work import Need, Op, Spread
from advisor.knowledge.view import View

CALLED = {"loops": "the belt loops", "label": "the label", "both": "the belt loops and the label"}
"""What sits on a band, by the word of the question."""


def off(view: View, band: str) -> tuple[Put, ...]:
    """What work across the band expects: whatever sits on it taken off."""
    return (Put(f"{band}.carried", "off"),) if view.word(f"{band}.carries") in CALLED else ()


def take_off(view: View, band: str) -> tuple[Op, ...]:
    """Unpick what sits where the band is worked on; nothing to do if nothing sits there."""
    if not off(view, band):
        return ()
    return (
        Op(
            id=f"take off {band}.carried",
            stage="join",
            verb="unpick",
            places=(band,),
            setup="unpick",
            minutes=Spread(5, 10, 20),
            says=(
                f"Unpick {CALLED[view.word(f'{band}.carries')]} where {view.words(band)} is to be worked on, at center "
                "back first; everything, if the band is made new. Look how each was sewn, and mark where the others "
                "stand. A lower end that was caught in the seam goes back into it when the band is basted on."
            ),
            expects=(Put(f"{band}.seam", "open"), Put(f"{band}.carried", "on")),
            effects=(Put(f"{band}.carried", "off"),),
            materials=(Need("seam ripper"),),
        ),
    )


def set_again(view: View, band: str) -> Op:
    """Sew them on again over the finished band."""
    word = view.word(f"{band}.carries")
    loops = (
        "Sew the loop of center back over the seam in the band, which it hides, in its old stitches and with a bar at "
        "both ends. Lay the band flat: the others stand alike left and right, none over a side seam that has moved. "
        "Thread a belt through before you stop. "
    )
    label = (
        "Sew the label on through its old holes, over the middle again: leather and paper take no second row. If the "
        "loop hides it, set it beside the loop."
    )
    return Op(
        id=f"set {band}.carried",
        stage="finish",
        verb="sew",
        places=(band,),
        setup="straight",
        minutes=Spread(8, 15, 30),
        says=((loops if word in ("loops", "both") else "") + (label if word in ("label", "both") else "")).rstrip(),
        expects=(Put(f"{band}.carried", "off"),),
        effects=(Put(f"{band}.carried", "set"),),
        needs=(f"sew {band}.seam", f"press {band}.press"),
        materials=(Need("topstitching thread to match"), Need("stout needle")),
    )
