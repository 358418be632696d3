"""`sweep`: what the advice would be over everything an answer might be.

From it alone: whether a question matters, "only if" for what she cannot say, the value that flips a refusal.
Two answers are the same to a sweep if the advice has the same signature: fixes, their order, what is ruled
out, cautions, the steps of the work; not the numbers.
"""

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from advisor.advise.follow import Followed, follow
from advisor.advise.kept import Kept
from advisor.advise.order import ordered
from advisor.advise.plan import merged
from advisor.advise.world import World, world_of
from advisor.core.case import Case
from advisor.core.model import Key, Mm, Value
from advisor.core.question import Question
from advisor.lengths import TAPES, Tape, on_tape
from advisor.rulebase.base import RuleBase

Signature = tuple[object, ...]
GRID = 8


def signature(followed: Followed, world: World) -> Signature:
    """Fixes in order, what is ruled out, cautions and steps; equal for advice that differs in numbers only."""
    advice = followed.advice
    ops, _ = merged(advice.chosen())
    return (
        tuple(finding.id for finding in advice.findings),
        tuple((o.id, o.open, o.cautions, o.grades) for o in advice.options),
        tuple(finding.id for finding in advice.remains),
        tuple(op.id for op in ordered(ops, world.model.states)),
    )


@dataclass(frozen=True)
class Group:
    """A run of values with one signature. Words, or lengths from `values[0]` to `values[-1]`."""

    values: tuple[Value, ...]
    followed: Followed


Outcome = tuple[Followed, Signature]

KEPT = 1024
# By the identity of the case and of the question, which are kept beside so that no others can take it.
_outcomes: Kept[tuple[Case, Outcome]] = Kept(KEPT)
_grids: Kept[tuple[Question, tuple[Value, ...]]] = Kept(KEPT)


def outcome(base: RuleBase, case: Case, suppose: Mapping[Key, Value]) -> Outcome:
    """The advice followed to its end with `suppose` in place of answers, and its signature."""
    token = (base, id(case), frozenset(suppose.items()))
    known = _outcomes.get(token)
    if known is None:
        world = world_of(case, base.garment(case.garment), suppose)
        followed = follow(base, world, case.choices, case.limits, told=False)
        known = _outcomes.put(token, (case, (followed, signature(followed, world))))
    return known[1]


def grid(question: Question, tape: Tape) -> tuple[Value, ...]:
    """The values a sweep starts from: every word, or a halving grid over the range, on the tape."""
    token = (id(question), tape)
    known = _grids.get(token)
    if known is None:
        known = _grids.put(token, (question, _grid(question, tape)))
    return known[1]


def _grid(question: Question, tape: Tape) -> tuple[Value, ...]:
    if question.kind == "word":
        return tuple(question.words)
    run = question.most - question.least
    marks = [on_tape(question.least + run * Fraction(i, GRID), tape) for i in range(GRID + 1)]
    # Near nothing is where most lengths lie: halve there further.
    fine = [on_tape(question.least + run * Fraction(1, GRID * 2**i), tape) for i in range(1, 5)]
    return tuple(sorted({mark for mark in [*marks, *fine] if question.least <= mark <= question.most}))


def sweep(base: RuleBase, case: Case, key: Key) -> tuple[Group, ...]:
    """The groups of values of `key` with equal signatures, in order; lengths bisected down to a tape mark."""
    question = base.garment(case.garment).questions[key]
    tape = TAPES[case.tape]
    seen: dict[Value, tuple[Followed, Signature]] = {}

    def at(value: Value) -> tuple[Followed, Signature]:
        if value not in seen:
            seen[value] = outcome(base, case, {key: value})
        return seen[value]

    values = grid(question, tape)
    for value in values:
        at(value)
    if question.kind != "word":
        for low, high in pairwise(values):
            assert isinstance(low, Fraction) and isinstance(high, Fraction)
            _bisect(low, high, at, tape)
    return _grouped(question, seen)


def _bisect(low: Mm, high: Mm, at: Callable[[Value], tuple[Followed, Signature]], tape: Tape) -> None:
    if high - low <= tape.mark or at(low)[1] == at(high)[1]:
        return
    middle = on_tape((low + high) / 2, tape)
    if low < middle < high:
        # The middle may be like neither end: then there is a flip on both sides of it.
        at(middle)
        _bisect(low, middle, at, tape)
        _bisect(middle, high, at, tape)


def _grouped(question: Question, seen: Mapping[Value, tuple[Followed, Signature]]) -> tuple[Group, ...]:
    if question.kind == "word":
        order: list[Value] = list(question.words)
    else:
        order = sorted(seen)
    groups: list[tuple[Signature, list[Value]]] = []
    for value in order:
        mark = seen[value][1]
        same = [g for g in groups if g[0] == mark] if question.kind == "word" else groups[-1:]
        if same and same[0][0] == mark:
            same[0][1].append(value)
        else:
            groups.append((mark, [value]))
    return tuple(Group(tuple(values), seen[values[0]][0]) for _, values in groups)


def matters(base: RuleBase, case: Case, key: Key) -> bool:
    """Whether any answer to `key` gives another signature than what stands now."""
    question = base.garment(case.garment).questions[key]
    _, now = outcome(base, case, {})
    return any(mark != now for mark in _marks(base, case, question))


def _marks(base: RuleBase, case: Case, question: Question) -> Iterator[Signature]:
    for value in grid(question, TAPES[case.tape]):
        yield outcome(base, case, {question.key: value})[1]
