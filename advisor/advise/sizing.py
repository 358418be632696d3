"""Sizing a fix, remembered by what it looked at: in a sweep most fixes see the same garment again and again.

A fix is a pure function of the trouble and of the keys it reads, so the same values read give the same work.
"""

from collections.abc import Mapping
from dataclasses import dataclass, replace

from advisor.advise.kept import KeptByReads, Numbers
from advisor.core.model import Key, Model, Value
from advisor.core.work import Need, Op, Work
from advisor.figures.formula import FigureError
from advisor.knowledge.fix import Fix
from advisor.knowledge.view import Trouble, View
from advisor.lengths import Tape
from advisor.words import retold

KEPT = 4096


@dataclass(frozen=True, eq=False)
class Sized:
    """What a fix comes to, or why it cannot be reckoned, and the keys it looked at."""

    work: Work
    fault: FigureError | None
    reads: frozenset[Key]


_known: KeptByReads[Sized] = KeptByReads(KEPT)
_benches = Numbers(64)


def bench(garment: str, tape: Tape) -> int:
    """A number for all that sizing depends on besides the fix, the trouble and the values read."""
    return _benches.of((garment, tape))


def size(bench: int, fix: Fix, trouble: Trouble, model: Model, tape: Tape, values: Mapping[Key, Value]) -> Sized:
    """The work of `fix` for `trouble` on this garment. `values`: its measures and states in one."""
    token = (bench, fix, trouble.finding, trouble.problem, trouble.place, trouble.role, trouble.mm)
    sized = _known.get(token, values)
    if sized is None:
        sized = _size(fix, trouble, model, tape)
        _known.put(token, tuple(sorted(sized.reads)), values, sized)
    return sized


def _size(fix: Fix, trouble: Trouble, model: Model, tape: Tape) -> Sized:
    view = View.watching(model, tape)
    try:
        work, fault = on_tape(fix.work(trouble, view), tape), None
    except FigureError as refused:
        work, fault = Work({}, ()), refused
    return Sized(work, fault, frozenset(view.reads))


def on_tape(work: Work, tape: Tape) -> Work:
    """The work with every amount that stands in its sentences told on `tape`."""
    if tape.unit == "in":
        return work
    return replace(work, ops=tuple(_retold(op, tape) for op in work.ops))


def _retold(op: Op, tape: Tape) -> Op:
    needs = tuple(Need(retold(need.what, tape), retold(need.amount, tape)) for need in op.materials)
    return replace(op, says=retold(op.says, tape), check_before=retold(op.check_before, tape), materials=needs)
