"""Looking ahead: the same rules run again and again on garments that differ in little.

A fresh run on the whole garment is the truth and is what a person is told. Sweeps change a kept run instead; a
property test holds the two equal. One kept run for each thread and rule base.
"""

import threading
from collections.abc import Iterable

from advisor.engine import Run, SlotFact
from advisor.rulebase.base import RuleBase


class _Kept(threading.local):
    """The run kept by this thread."""

    base: RuleBase | None = None
    session: object = None
    facts: frozenset[SlotFact] = frozenset()


_kept = _Kept()


def look(base: RuleBase, facts: Iterable[SlotFact]) -> Run:
    """What follows from `facts`; the facts as in a fresh run. KnowledgeError as from the engine."""
    wanted = frozenset(facts)
    session, _kept.session = _kept.session, None  # after a fault the session is of no more use
    if session is None or _kept.base is not base:
        session = base.engine.session(wanted)
        run: Run = session.result()
    else:
        gone, new = _kept.facts - wanted, wanted - _kept.facts
        run = session.change(gone, new)  # type: ignore[attr-defined]
    _kept.base, _kept.session, _kept.facts = base, session, wanted
    return run
