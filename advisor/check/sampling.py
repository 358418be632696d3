"""Tests compared: whether two say the same, and values to try them on: every word a slot may hold, and lengths
round each number a test knows.
"""

import dis
from collections.abc import Callable, Iterable, Iterator, Mapping
from fractions import Fraction
from itertools import product
from math import prod
from types import CodeType, FunctionType
from typing import Any

from advisor.check.material import Material
from advisor.check.shape import asked
from advisor.check.vocabulary import possible_words
from advisor.core.model import Mm
from advisor.engine import SlotFact
from advisor.lengths import INCH_TAPE

Test = Callable[..., Any]
Bound = tuple[SlotFact, str]  # the pattern and the slot that bind a name
MOST_TRIED = 20_000
FOOT = Mm(3048, 10)  # 12 in
PLAIN = (str, int, Fraction, frozenset, tuple)


def values_for(material: Material, bound: Bound, tests: Iterable[Test]) -> tuple[Any, ...] | None:
    """The values a bound name may be tried with; None if that is not known."""
    pattern, slot = bound
    if pattern.__fields__[slot].kind is Fraction:
        return lengths_round(tests)
    words = possible_words(material, pattern, slot)
    return tuple(sorted(words)) if words is not None else None


def lengths_round(tests: Iterable[Test]) -> tuple[Mm, ...]:
    """Lengths at, just under and just over the numbers the tests know, and a coarse scale of both signs."""
    known = {Mm(0)} | {number for test in tests for number in _numbers(test)}
    near = {number + step for number in known for step in (-INCH_TAPE.mark, Mm(0), INCH_TAPE.mark)}
    return tuple(sorted(near | {FOOT * part / 4 for part in (-4, 1, 2, 4, 8, 16)}))


def worlds(values: Mapping[str, tuple[Any, ...]]) -> Iterator[dict[str, Any]]:
    """All combinations of values by name; none if there are too many to try."""
    if prod(map(len, values.values())) <= MOST_TRIED:
        for chosen in product(*values.values()):
            yield dict(zip(values, chosen, strict=True))


def passes(test: Test, world: Mapping[str, Any]) -> bool:
    """Whether a test is met; one that breaks is not, which the check of examples tells of."""
    try:
        return bool(test(**{name: world[name] for name in asked(test)}))
    except Exception:  # an author's function may raise anything
        return False


def same_function(one: Test, other: Test) -> bool:
    """Whether two functions say the same, whatever they and their arguments are called."""
    return one is other or (_meaning(one) is not None and _meaning(one) == _meaning(other))


def _meaning(function: Any) -> tuple[Any, ...] | None:
    """What a function does, step by step, its arguments by number and what it names by value; None if not known."""
    if not isinstance(function, FunctionType) or function.__closure__ or function.__defaults__:
        return None
    code, steps = function.__code__, []
    for step in dis.get_instructions(code):
        value: Any = step.argval
        if step.opname == "LOAD_GLOBAL":
            value = function.__globals__.get(step.argval, step.argval)
            value = value if isinstance(value, PLAIN) else _meaning(value)
        elif step.argval in code.co_varnames and "FAST" in step.opname:
            value = code.co_varnames.index(step.argval)
        if (value is None and step.opname == "LOAD_GLOBAL") or isinstance(value, CodeType):
            return None
        if step.opname not in ("RESUME", "COPY_FREE_VARS"):
            steps.append((step.opname, type(value), value))
    return code.co_argcount, *steps


def _numbers(test: Test) -> Iterator[Mm]:
    code = getattr(test, "__code__", None)
    if isinstance(code, CodeType):
        for value in (*code.co_consts, *(test.__globals__.get(name) for name in code.co_names)):
            if isinstance(value, int | Fraction) and not isinstance(value, bool):
                yield Mm(value)
