"""The options of a problem at a role as far as an amount and one state decide them; all else is taken at its best.

Amounts are counted in marks of an inch tape.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

from advisor.check.material import Material
from advisor.check.offered import Spot, answers_at
from advisor.check.sampling import passes
from advisor.check.shape import asked, fields, words_of
from advisor.engine import NOT
from advisor.knowledge.cards import Answer, Card, Condition, Veto
from advisor.knowledge.facts import Trait
from advisor.lengths import INCH_TAPE

State = tuple[str, str, str]  # role, slot and the word it is
Slot = tuple[str, str]
ANY: State = ("", "", "")


@dataclass(frozen=True)
class Line:
    """The conditions of a card, those left out that were met already. `known`: the names that have a value.

    `slots`: the states it asks for. `asks_amount`: whether a test asks for the amount.
    """

    id: str
    conditions: tuple[Condition, ...]
    known: Mapping[str, Any]
    slots: frozenset[Slot]
    asks_amount: bool
    seen: dict[tuple[int, str], bool | None] = field(default_factory=dict)

    def holds(self, marks: int, state: State) -> bool | None:
        """Whether they are met; None if amount and state do not decide it."""
        key = marks if self.asks_amount else 0, state[2] if state[:2] in self.slots else ""
        if key not in self.seen:
            self.seen[key] = self._holds(marks, state if key[1] else ANY)
        return self.seen[key]

    def _holds(self, marks: int, state: State) -> bool | None:
        names, decided = {**self.known, "amount": INCH_TAPE.mark * marks}, True
        for condition in self.conditions:
            met: bool | None = None
            if condition.test is None:
                met = _met(condition.element, state, names)
            elif names.keys() >= set(asked(condition.test)):
                met = passes(condition.test, names)
            if met is False:
                return False
            decided = decided and met is not None
        return True if decided else None


@dataclass(frozen=True)
class Rung:
    """An answer that closes the problem, and those vetoes of its fix that amount and one state may decide."""

    fix: str
    answer: Line
    vetoes: tuple[Line, ...]

    def against(self, marks: int, state: State) -> list[str]:
        """The cards that keep it from standing: the answer itself, or vetoes; empty if it stands."""
        if self.answer.holds(marks, state) is False:
            return [self.answer.id]
        return [veto.id for veto in self.vetoes if veto.holds(marks, state)]


def closing(material: Material, spot: Spot) -> tuple[tuple[str, Answer], ...]:
    """The answers to a spot that would close its problem."""
    return tuple((id, card) for id, card in answers_at(material, spot) if material.fixes[card.fix].closes)


def rungs_of(material: Material, spot: Spot, answers: tuple[tuple[str, Answer], ...]) -> tuple[Rung, ...]:
    """Those answers with the vetoes that may be decided."""
    return tuple(_rungs(material, spot, answers))


def _rungs(material: Material, spot: Spot, answers: tuple[tuple[str, Answer], ...]) -> Iterator[Rung]:
    vetoes = [(id, veto) for id, veto in material.of(Veto) if id in material.sound]
    for id, card in answers:
        known = {"role": spot.role, "name": spot.problem, "fix": card.fix}
        answer = _line(id, card, known)
        lines = [_line(other, veto, known) for other, veto in vetoes if veto.names(card.fix)]
        if answer is not None:
            yield Rung(card.fix, answer, tuple(line for line in lines if line is not None and _decidable(line)))


def _line(id: str, card: Card, known: Mapping[str, Any]) -> Line | None:
    """A card without the tests these names pass; None if they fail one."""
    left: list[Condition] = []
    for condition in card.when:
        if condition.test is None or not known.keys() >= set(asked(condition.test)):
            left.append(condition)
        elif not passes(condition.test, known):
            return None
    states = [_slot_of(_inside(condition.element)) for condition in left]
    asks_amount = any("amount" in asked(condition.test) for condition in left if condition.test)
    return Line(id, tuple(left), known, frozenset(slot for slot in states if slot is not None), asks_amount)


def _decidable(line: Line) -> bool:
    """Whether an amount and one state decide it: it looks at nothing else."""
    names = {*line.known, "amount"}
    for condition in line.conditions:
        if condition.test is None:
            inside = _inside(condition.element)
            if _slot_of(inside) is None:
                return False
            names |= {each.name for each in fields(inside) if each.slot == "word"}
        elif not names >= set(asked(condition.test)):
            return False
    return len(line.slots) <= 1


def _met(element: Any, state: State, names: dict[str, Any]) -> bool | None:
    """Whether a condition on this state is met; a name it binds to the word is added to `names`."""
    inside = _inside(element)
    if _slot_of(inside) != state[:2]:
        return None
    words = words_of(inside, "word")
    met = words is None or state[2] in words
    if inside is not element:
        return not met
    names.update({each.name: state[2] for each in fields(inside) if each.slot == "word" and each.name})
    return met


def _inside(element: Any) -> Any:
    """What an `unless` refuses; anything else as it is."""
    return element[0] if isinstance(element, NOT) and len(element) == 1 else element


def _slot_of(pattern: Any) -> Slot | None:
    """Role and slot of the one state a pattern asks for."""
    if not isinstance(pattern, Trait):
        return None
    roles, slots = words_of(pattern, "role"), words_of(pattern, "slot")
    return (min(roles), min(slots)) if roles and slots and len(roles) == len(slots) == 1 else None
