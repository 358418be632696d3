"""Small fact classes and short hands for the tests of the engine."""

from __future__ import annotations

import os
import subprocess
import sys
from collections.abc import Callable, Iterable
from fractions import Fraction
from pathlib import Path
from typing import Any

from advisor.engine import Engine, RuleSpec, Run, Slot, SlotFact

ROOT = Path(__file__).parents[2]


class A(SlotFact):
    v = Slot(int)


class B(SlotFact):
    v = Slot(int)


class C(SlotFact):
    v = Slot(int)


class Made(SlotFact):
    by = Slot(str)
    v = Slot(int)


class Measure(SlotFact):
    key = Slot(str)
    mm = Slot(Fraction)


class Answer(SlotFact):
    name = Slot(str)
    word = Slot(str, words=("yes", "no", "unsure"))
    note = Slot(str, optional=True)


def rule(name: str, *conditions: Any, layer: int = 1, action: Callable[..., Any] | None = None) -> RuleSpec:
    """A rule that, unless told otherwise, answers that it fired."""
    return RuleSpec(name, layer, conditions, action or (lambda: Made(by=name, v=0)))


def with_v(name: str, *conditions: Any, layer: int = 1) -> RuleSpec:
    """A rule that answers what `v` was bound to."""
    return RuleSpec(name, layer, conditions, lambda v: Made(by=name, v=v))


def run(rules: RuleSpec | Iterable[RuleSpec], *facts: SlotFact) -> Run:
    return Engine([rules] if isinstance(rules, RuleSpec) else list(rules)).run(facts)


def fired(rules: RuleSpec | Iterable[RuleSpec], *facts: SlotFact) -> list[str]:
    """The rules that fired, once for each firing."""
    return [firing.rule for firing in run(rules, *facts).firings]


def values(rules: RuleSpec | Iterable[RuleSpec], *facts: SlotFact) -> list[int]:
    """The values of all Made facts."""
    return [fact.v for fact in run(rules, *facts).of(Made)]


def python(code: str, hash_seed: str = "0") -> str:
    """What a fresh interpreter prints for `code`."""
    paths = os.pathsep.join([str(ROOT), str(Path(__file__).parent)])
    done = subprocess.run(
        [sys.executable, "-c", code],
        capture_output=True,
        text=True,
        check=True,
        env={**os.environ, "PYTHONHASHSEED": hash_seed, "PYTHONPATH": paths},
        timeout=60,
    )
    return done.stdout
