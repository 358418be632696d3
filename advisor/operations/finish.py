"""The last look: whatever earlier work left open, raw, marked or unpressed is brought to an end the plain way."""

from advisor.core.model import Key, Put
from advisor.core.stages import Stage
from advisor.core.work import Need, Op, Setup, Spread
from advisor.knowledge.view import View

SEAMS = ("seam", "center_back", "sides", "inseams", "outseams", "beside")
"""The slots that hold whether a seam is sewn."""
UNSEWN = ("open", "basted")
STAGE: Stage = "finish"


def close_seams(view: View, place: str) -> tuple[Op, ...]:
    """Sew every seam of a place that is open or only basted."""
    keys = [f"{place}.{slot}" for slot in SEAMS if view.model.states.get(f"{place}.{slot}") in UNSEWN]
    return tuple(
        _last(
            key,
            "close",
            "straight",
            Spread(10, 20, 30),
            view.word(key),
            "sewn",
            f"Sew the seam left open at {view.words(place)}, on the old line or the basted one; take the basting out, "
            "press.",
            (Need("thread to match"),),
        )
        for key in keys
    )


def press_place(view: View, place: str) -> Op:
    """Press what is due."""
    return _last(
        f"{place}.press", "finish pressing", "iron", Spread(5, 10, 15), "due", "done",
        f"Press the new stitching at {view.words(place)}, first flat as sewn, then as it lies when worn. Try the heat "
        "on an inside seam, and go by the dots of the label: one 110 C without steam, two 150 C, three 200 C.",
        (Need("press cloth"),),
    )  # fmt: skip


def close_hem(view: View, place: str) -> Op:
    """Finish a hem that was left open or raw."""
    return _last(
        f"{place}.hem", "close", "straight", Spread(10, 20, 35), view.word(f"{place}.hem"), "sewn",
        f"Finish the raw edge at {view.words(place)}, fold it on its line, press, and sew it as it was sewn before.",
        (Need("thread to match"),),
    )  # fmt: skip


def rub_out(view: View, place: str) -> Op:
    """Take out a line that was marked and is not needed."""
    return _last(
        f"{place}.line", "rub out", "table", Spread(3, 5, 10), "marked", "none",
        f"Take the marks at {view.words(place)} out: pull the thread marks, brush off the chalk, before an iron sets "
        "it.",
        (),
    )  # fmt: skip


def pull_test(view: View, place: str) -> Op:
    """Pull every small part of a child's garment."""
    return _last(
        f"{place}.parts", "pull", "hand", Spread(5, 10, 20), "untested", "tested",
        "Pull hard at every button, snap, bead and zipper slider. What gives is sewn on again over a patch or taken "
        "off; what has come off and is small enough to swallow is thrown away.",
        (Need("strong thread"),),
    )  # fmt: skip


def _last(
    key: Key, verb: str, setup: Setup, minutes: Spread, before: str, after: str, says: str, materials: tuple[Need, ...]
) -> Op:
    return Op(
        id=f"{verb} {key}",
        stage=STAGE,
        verb=verb,
        places=(key.partition(".")[0],),
        setup=setup,
        minutes=minutes,
        says=says,
        expects=(Put(key, before),),
        effects=(Put(key, after),),
        materials=materials,
    )
