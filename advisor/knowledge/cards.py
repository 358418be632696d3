"""Rule cards: what a rule file of rules/ says. The path of the file is the rule's id; it is written nowhere else.

    Find    something is wrong            (reads measures, traits and joins; knows no fix)
    Answer  a fix answers a problem       (one problem, one fix, and when)
    Veto    a fix is ruled out            (one fix, or all, and why)

A card's conditions each carry words of their own, so that a refusal can be told without code.
"""

from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from typing import Any

from advisor.core.model import Mm
from advisor.core.stages import Stage
from advisor.engine import MATCH, NOT, TEST, SlotFact
from advisor.knowledge import facts


@dataclass(frozen=True)
class Condition:
    """One condition: its words, and the pattern, refusal or test the engine runs.

    `test` is the plain predicate of a `such_that`, kept so that its names can be checked.
    """

    words: str
    element: Any
    test: Callable[..., bool] | None = None


def given(words: str, pattern: SlotFact) -> Condition:
    """There is a fact like this; names bound with MATCH serve the conditions after it."""
    return Condition(words, pattern)


def unless(words: str, pattern: SlotFact) -> Condition:
    """There is no fact like this. Names in it must be bound before."""
    return Condition(words, NOT(pattern))


def such_that(words: str, predicate: Callable[..., bool]) -> Condition:
    """The bound values the predicate asks for by name satisfy it."""
    return Condition(words, TEST(predicate), predicate)


@dataclass(frozen=True)
class Example:
    """Facts on which a rule fires (`fires`), with what it must then say in `amount` if anything."""

    words: str
    facts: tuple[SlotFact, ...]
    amount: Mm | None = None


@dataclass(frozen=True)
class Near:
    """A near miss: the first firing example with one fact changed, or (`without`) one fact left out, or one added."""

    words: str
    at: int = 0
    changes: Mapping[str, Any] = field(default_factory=dict)
    without: bool = False
    adding: tuple[SlotFact, ...] = ()


def fires(words: str, *example: SlotFact, amount: Mm | None = None) -> Example:
    """An example on which the rule fires."""
    return Example(words, example, amount)


def near(words: str, *, at: int = 0, **changes: Any) -> Near:
    """The first example with slots of its fact number `at` changed: the rule stays silent."""
    return Near(words, at, changes)


def near_without(words: str, *, at: int) -> Near:
    """The first example without its fact number `at`: the rule stays silent."""
    return Near(words, at, without=True)


def near_with(words: str, *added: SlotFact) -> Near:
    """The first example with facts added: the rule stays silent."""
    return Near(words, adding=added)


@dataclass(frozen=True, kw_only=True, eq=False)
class Card:
    """What every rule card says.

    title: the thing in a few words. why: a sentence or more about cloth and body. source: a key of
    rules/sources.toml, or "common-practice" or "from-memory". says: the sentence told to the person;
    {names} are bound values or those of `reckons`, lengths shown on her tape, places in their own words.
    """

    title: str
    why: str
    source: str
    when: tuple[Condition, ...]
    fires: tuple[Example, ...]
    near: tuple[Near, ...]
    says: str
    reckons: Mapping[str, Callable[..., Any]] = field(default_factory=dict)

    def conditions(self) -> tuple[Condition, ...]:
        """All conditions, those the card implies first."""
        return self.when


@dataclass(frozen=True, kw_only=True, eq=False)
class Find(Card):
    """Something is wrong at the bound `place` (of the bound `role`). `amount` reckons its mm from bound names."""

    problem: str
    stage: Stage
    amount: Callable[..., Mm] | None = None


@dataclass(frozen=True, kw_only=True, eq=False)
class Answer(Card):
    """`fix` answers `problem` (at a place of `role`, if given), as long as the conditions hold.

    Binds `problem`, `place`, `role` and `amount` of the problem for the conditions.
    """

    problem: str
    fix: str
    role: str = ""
    says: str = ""

    def conditions(self) -> tuple[Condition, ...]:
        """The problem answered, then the card's own conditions."""
        role = {"role": self.role} if self.role else {"role": MATCH.role}
        pattern = facts.Problem(name=self.problem, id=MATCH.problem, place=MATCH.place, mm=MATCH.amount, **role)
        return (given("the problem is there", pattern), *self.when)


@dataclass(frozen=True, kw_only=True, eq=False)
class Veto(Card):
    """`fix` is ruled out for the problem it was offered for: one, or any of several. "" speaks of every fix offered.

    Binds `problem`, `fix` (unless it is one), `name`, `place`, `role` and `amount` of the problem for the conditions.
    """

    fix: str | tuple[str, ...] = ""

    @property
    def fixes(self) -> tuple[str, ...]:
        """The fixes it speaks of by name; none if it speaks of every fix."""
        if isinstance(self.fix, tuple):
            return self.fix
        return (self.fix,) if self.fix else ()

    def names(self, fix: str) -> bool:
        """Whether it speaks of this fix: by name, or because it speaks of all."""
        return not self.fixes or fix in self.fixes

    def conditions(self) -> tuple[Condition, ...]:
        """The offer ruled out, then the card's own conditions."""
        fixes = self.fixes
        one = {"fix": fixes[0]} if len(fixes) == 1 else {"fix": MATCH.fix}
        offer = facts.Offer(problem=MATCH.problem, name=MATCH.name, place=MATCH.place, role=MATCH.role, **one)
        problem = facts.Problem(id=MATCH.problem, mm=MATCH.amount)
        implied = (given("the fix is offered", offer), given("for the problem", problem))
        if len(fixes) < 2:
            return (*implied, *self.when)
        return (*implied, such_that("it is one of the fixes meant", lambda fix: fix in fixes), *self.when)


LAYER = {Find: 1, Answer: 2, Veto: 3}
