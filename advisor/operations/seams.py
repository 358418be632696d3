"""Opening a seam, sewing it again, pressing it."""

from advisor.core.model import Key, Put, place_of
from advisor.core.stages import Stage
from advisor.core.work import Need, Op, Spread


def open_seam(key: Key, words: str, minutes: Spread, stage: Stage = "open") -> Op:
    """Unpick the seam whose state is `key` ("sewn" or "open"); `words` names it ("the waist seam")."""
    return Op(
        id=f"open {key}",
        stage=stage,
        verb="unpick",
        places=(place_of(key),),
        setup="unpick",
        minutes=minutes,
        says=f"Unpick {words}. Pull no threads through the cloth; brush out the ends.",
        expects=(Put(key, "sewn"),),
        effects=(Put(key, "open"),),
        materials=(Need("seam ripper"),),
    )


def sew_seam(key: Key, words: str, minutes: Spread, stage: Stage, press_key: Key = "") -> Op:
    """Sew the opened seam `key` again, after everything that needs it open. Pressing is then due at `press_key`."""
    due = (Put(press_key, "due"),) if press_key else ()
    return Op(
        id=f"sew {key}",
        stage=stage,
        verb="sew",
        places=(place_of(key),),
        setup="straight",
        minutes=minutes,
        says=(
            f"Baste {words}, matching seams, center front and center back. Try on. Then sew it, and take the basting "
            "out."
        ),
        expects=(Put(key, "open"),),
        effects=(Put(key, "sewn"), *due),
        try_on=True,
        materials=(Need("thread to match"), Need("basting thread")),
    )


def press(key: Key, words: str, minutes: Spread, stage: Stage) -> Op:
    """Press what is due at `key`, before another seam crosses it."""
    return Op(
        id=f"press {key}",
        stage=stage,
        verb="press",
        places=(place_of(key),),
        setup="iron",
        minutes=minutes,
        says=(
            f"Press {words}: first flat as sewn, then open or to one side. Try the heat on an inside seam first; "
            "where no iron may go, flatten it with the fingers or a smooth mallet."
        ),
        expects=(Put(key, "due"),),
        effects=(Put(key, "done"),),
    )
