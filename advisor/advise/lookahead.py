"""Looking ahead: the same rules run again and again on garments that differ in little.

A fresh run on the whole garment is the truth and is what a person is told. Sweeps change kept runs instead; a
property test holds the two equal. Each thread keeps one run for each stage of a pass, because the garment after
a stage is most like the garment after the same stage in the world before.
"""

import threading
from collections import OrderedDict

from advisor.advise.adapter import Picture
from advisor.core.model import Model
from advisor.engine import Run, Session
from advisor.rulebase.base import RuleBase

KEPT = 24

At = tuple[str, str]
"""Where a run stands: the garment's type, and the stage it has come through."""


class _Desk(threading.local):
    """What this thread keeps of one rule base: what was told of garments last, and the runs on them."""

    def __init__(self) -> None:
        self.base: RuleBase | None = None
        self.told: OrderedDict[At, Picture] = OrderedDict()
        self.runs: OrderedDict[At, tuple[Picture, Session]] = OrderedDict()

    def for_base(self, base: RuleBase) -> None:
        if self.base is not base:
            self.base = base
            self.told.clear()
            self.runs.clear()


_desk = _Desk()


def look(base: RuleBase, at: At, model: Model) -> Run:
    """What follows from a garment, by changing a kept run. KnowledgeError as from the engine."""
    _desk.for_base(base)
    picture, session = _desk.runs.pop(at, (None, None))  # after a fault neither is of more use
    if picture is None or session is None:
        picture = Picture(base.read)
        picture.turn(model)
        session = base.engine.session(picture.facts)
        run = session.result()
    else:
        gone, come = picture.turn(model)
        run = session.change(gone, come)
    _desk.runs[at] = picture, session
    if len(_desk.runs) > KEPT:
        _desk.runs.popitem(last=False)
    return run


def run_on(base: RuleBase, at: At, model: Model) -> Run:
    """What follows from a garment, from nothing. KnowledgeError as from the engine."""
    _desk.for_base(base)
    picture = _desk.told.pop(at, None) or Picture(base.read)
    picture.turn(model)
    _desk.told[at] = picture
    if len(_desk.told) > KEPT:
        _desk.told.popitem(last=False)
    return base.engine.run(picture.facts)
