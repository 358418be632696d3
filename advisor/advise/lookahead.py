"""Looking at garments: the same rules run again and again on garments that differ in little.

A fresh run on the whole garment is the truth, and is what a plan is checked by. Passes change kept runs instead,
or twins of them; a property test holds both equal, reasons included. Each thread keeps one run for each stage of
a pass, because the garment after a stage is most like the garment after the same stage in the world before.
"""

import threading
from collections import OrderedDict
from dataclasses import dataclass

from advisor.advise.adapter import Picture, facts_of
from advisor.core.model import Model
from advisor.engine import Run, Session
from advisor.rulebase.base import RuleBase

KEPT = 24
FAR = 30
"""So many facts that differ cost more to change one by one than a run from nothing does."""

At = tuple[str, str]
"""Where a run stands: the garment's type, and the stage it has come through."""


@dataclass(frozen=True)
class _Standing:
    """A run, and what it was told of its garment."""

    picture: Picture
    session: Session

    def twin(self) -> "_Standing":
        """The same, to be changed on its own."""
        return _Standing(self.picture.twin(), self.session.twin())


class _Desk(threading.local):
    """The runs that this thread keeps of one rule base."""

    def __init__(self) -> None:
        self.base: RuleBase | None = None
        self.runs: OrderedDict[At, _Standing] = OrderedDict()

    def for_base(self, base: RuleBase) -> None:
        if self.base is not base:
            self.base = base
            self.runs.clear()


_desk = _Desk()


def look(base: RuleBase, at: At, model: Model, before: At | None = None) -> Run:
    """What follows from a garment, by changing a kept run. KnowledgeError as from the engine.

    before: where this garment was looked at last; a twin of that run serves if there is none nearer.
    """
    _desk.for_base(base)
    runs = _desk.runs
    standing = runs.pop(at, None)  # after a fault it is of no more use
    if (standing is None or standing.picture.apart(model) > FAR) and before is not None and before in runs:
        standing = runs[before].twin()
    picture = standing.picture if standing else Picture(base.read)
    gone, come = picture.turn(model)
    if standing and len(gone) + len(come) <= FAR:
        session = standing.session
        run = session.change(gone, come)
    else:
        session = base.engine.session(picture.facts)
        run = session.result()
    runs[at] = _Standing(picture, session)
    if len(runs) > KEPT:
        runs.popitem(last=False)
    return run


def run_on(base: RuleBase, model: Model) -> Run:
    """What follows from a garment, from nothing. KnowledgeError as from the engine."""
    return base.engine.run(facts_of(model, base.read))
