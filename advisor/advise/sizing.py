"""Sizing a fix, remembered by what it looked at: in a sweep most fixes see the same garment again and again.

A fix is a pure function of the trouble and of the keys it reads, so the same values read give the same work.
"""

from collections import OrderedDict
from dataclasses import dataclass

from advisor.core.case import FixId
from advisor.core.model import Key, Model, Value
from advisor.core.work import Work
from advisor.figures.formula import FigureError
from advisor.knowledge.fix import Fix
from advisor.knowledge.view import Trouble, View
from advisor.lengths import Tape

KEPT = 1024
EACH = 8


@dataclass(frozen=True)
class Sized:
    """What a fix comes to, or why it cannot be reckoned, and the keys it looked at."""

    work: Work
    fault: FigureError | None
    reads: frozenset[Key]


_known: OrderedDict[object, list[tuple[tuple[tuple[Key, Value | None], ...], Sized]]] = OrderedDict()


def size(garment: str, id: FixId, fix: Fix, trouble: Trouble, model: Model, tape: Tape) -> Sized:
    """The work of `fix` for `trouble` on this garment."""
    entries = _known.setdefault((garment, id, fix, trouble, tape), [])
    for values, sized in entries:
        if all(_value(model, key) == value for key, value in values):
            return sized
    sized = _size(fix, trouble, model, tape)
    entries.insert(0, (tuple((key, _value(model, key)) for key in sorted(sized.reads)), sized))
    del entries[EACH:]
    if len(_known) > KEPT:
        _known.popitem(last=False)
    return sized


def _size(fix: Fix, trouble: Trouble, model: Model, tape: Tape) -> Sized:
    view = View.watching(model, tape)
    try:
        work, fault = fix.work(trouble, view), None
    except FigureError as refused:
        work, fault = Work({}, ()), refused
    return Sized(work, fault, frozenset(view.reads))


def _value(model: Model, key: Key) -> Value | None:
    return model.measures[key] if key in model.measures else model.states.get(key)
