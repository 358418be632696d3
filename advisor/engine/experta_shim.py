"""The one door to experta: every other module takes experta's names from here.

experta 1.9.4 cannot be imported plainly on Python 3.10 and later: a library it needs looks for
`collections.Mapping`, which is gone; and it calls `logging.basicConfig()`, whose handler would write
over a full-screen program. Both are seen to for the length of the import and put back afterwards.
experta also swallows its own ImportErrors and then arrives empty, so that is checked too.
"""

from __future__ import annotations

import collections
import collections.abc
import logging
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import TYPE_CHECKING, Any, Self

__all__ = [
    "AND", "ANDFC", "AS", "EXISTS", "FORALL", "MATCH", "NOT", "NOTFC", "OR", "ORFC", "TEST",
    "Activation", "Agenda", "BaseField", "ConditionalElement", "DepthStrategy", "Fact", "FactList",
    "FieldConstraint", "InitialFact", "KnowledgeEngine", "L", "Matcher", "P", "ReteMatcher", "Rule",
    "Strategy", "W",
]  # fmt: skip


@contextmanager
def _fit_for_import() -> Iterator[None]:
    """Lend experta the name it misses and a root handler, so that `basicConfig()` adds none."""
    lent = not hasattr(collections, "Mapping")
    quiet = logging.NullHandler()
    if lent:
        setattr(collections, "Mapping", collections.abc.Mapping)  # noqa: B010  (a name typing does not know)
    logging.root.addHandler(quiet)
    try:
        yield
    finally:
        logging.root.removeHandler(quiet)
        if lent:
            delattr(collections, "Mapping")


if TYPE_CHECKING:
    # experta carries no types; these declare the part of its interface that is used here.
    class ConditionalElement(tuple[Any, ...]):
        def __new__(cls, *args: Any) -> Self: ...

    class AND(ConditionalElement): ...

    class OR(ConditionalElement): ...

    class NOT(ConditionalElement): ...

    class TEST(ConditionalElement): ...

    class EXISTS(ConditionalElement): ...

    class FORALL(ConditionalElement): ...

    class FieldConstraint(ConditionalElement):
        def __and__(self, other: FieldConstraint) -> FieldConstraint: ...
        def __or__(self, other: FieldConstraint) -> FieldConstraint: ...
        def __invert__(self) -> FieldConstraint: ...
        def __rlshift__(self, other: str) -> Self: ...

    class ANDFC(FieldConstraint): ...

    class ORFC(FieldConstraint): ...

    class NOTFC(FieldConstraint): ...

    class L(FieldConstraint):
        __bind__: str | None
        value: Any

    class W(FieldConstraint):
        __bind__: str | None

    class P(FieldConstraint):
        __bind__: str | None
        match: Callable[[Any], Any]

        def __new__(cls, match: Callable[[Any], Any], __bind__: str | None = None) -> Self: ...

    class BaseField: ...

    class Fact(dict[str, Any]):
        __fields__: dict[str, Any]
        __bind__: str | None

        def __init__(self, *args: Any, **kwargs: Any) -> None: ...
        def __rlshift__(self, other: str) -> Self: ...

    class InitialFact(Fact): ...

    class Rule(ConditionalElement):
        salience: int
        spec: Any
        __name__: str

        def __new__(cls, *args: Any, salience: int = 0) -> Self: ...
        def __call__(self, *args: Any, **kwargs: Any) -> Any: ...
        def new_conditions(self, *args: Any) -> Rule: ...

    class Activation:
        rule: Rule
        facts: Any
        key: Any
        context: dict[str, Any]

        def __init__(self, rule: Rule, facts: Any, context: dict[str, Any] | None = None) -> None: ...

    class Agenda:
        activations: list[Any]

        def get_next(self) -> Any: ...

    class FactList(dict[int, Fact]): ...

    class Matcher:
        engine: Any

        def __init__(self, engine: Any) -> None: ...

    class ReteMatcher(Matcher): ...

    class Strategy:
        def update_agenda(self, agenda: Agenda, added: Any, removed: Any) -> None: ...

    class DepthStrategy(Strategy): ...

    class KnowledgeEngine:
        running: bool
        facts: Any
        agenda: Agenda
        matcher: Any
        strategy: Any

        def __init__(self) -> None: ...
        def get_rules(self) -> list[Rule]: ...
        def get_activations(self) -> tuple[list[Activation], list[Activation]]: ...
        def reset(self, **kwargs: Any) -> None: ...
        def declare(self, *facts: Fact) -> Fact | None: ...
        def run(self, steps: float = ...) -> None: ...

    class _Match:
        def __getattr__(self, name: str) -> W: ...

    class _As:
        def __getattr__(self, name: str) -> str: ...

    MATCH: _Match
    AS: _As
else:
    with _fit_for_import():
        import experta

        if not hasattr(experta, "KnowledgeEngine"):
            raise ImportError(
                "experta came without its KnowledgeEngine: one of the libraries it needs is missing. "
                "Install the advisor again with its dependencies."
            )
        from experta import (
            AND,
            AS,
            EXISTS,
            FORALL,
            MATCH,
            NOT,
            OR,
            TEST,
            Fact,
            InitialFact,
            KnowledgeEngine,
            L,
            P,
            Rule,
            W,
        )
        from experta.abstract import Matcher, Strategy
        from experta.activation import Activation
        from experta.agenda import Agenda
        from experta.conditionalelement import ConditionalElement
        from experta.fact import BaseField
        from experta.factlist import FactList
        from experta.fieldconstraint import ANDFC, NOTFC, ORFC, FieldConstraint
        from experta.matchers import ReteMatcher
        from experta.strategies import DepthStrategy
