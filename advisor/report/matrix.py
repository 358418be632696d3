"""The rule base as a table: for each place of a garment and each kind of trouble, how many ways there are to meet it.

Nothing is kept by hand but the kind of each problem (rules/problems.toml): which findings a place can have, and which
fixes answer them there, is read off the conditions of the cards.
"""

import inspect
from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from typing import Any

from advisor.core.model import Place, place_of, slot_of
from advisor.engine import P, SlotFact
from advisor.errors import KnowledgeError
from advisor.knowledge.cards import Answer, Card, Find
from advisor.knowledge.facts import Joined, Measure, Trait
from advisor.report.lines import bullets, heading, para
from advisor.rulebase.base import RuleBase
from advisor.rulebase.garment import Garment
from advisor.rulebase.toml import Shape, read_shape

FILE = "problems.toml"
ASIDE = "care"
"""A kind told beneath the table: it is about the work, not about a place that fits or is whole."""
LEAVE = "general.fixes.leave"
NAME, CELL = 18, 5


class ProblemsShape(Shape):
    """rules/problems.toml: kinds with their words, and the kind of each problem.

    `anywhere`: by kind the role of the place that tells of it wherever on the garment it is.
    `never`: by role and kind, why nothing is told or done there.
    """

    kinds: dict[str, str]
    problems: dict[str, str]
    anywhere: dict[str, str] = {}
    never: dict[str, dict[str, str]] = {}


@dataclass(frozen=True)
class Cell:
    """One place and one kind of trouble: fixes by id (leaving it among them), the problems, or why there is none.

    `elsewhere` is the place that tells of this kind wherever it is.
    """

    place: str
    kind: str
    problems: tuple[str, ...]
    fixes: tuple[str, ...]
    never: str = ""
    elsewhere: str = ""

    @property
    def mark(self) -> str:
        """How it is told: the number of ways, "^" for told elsewhere, "x" for a written cannot, "." for nothing."""
        if self.fixes:
            return str(len(self.fixes))
        return "^" if self.elsewhere else ("x" if self.never else ".")


def read_problems(base: RuleBase) -> ProblemsShape:
    """The kinds of all problems. KnowledgeError for a problem without a kind, and for one that nobody finds."""
    path = base.folder / FILE
    shape = read_shape(path, ProblemsShape)
    found = {card.problem for card in base.rules.values() if isinstance(card, Find)}
    wrong = [f"no kind for '{problem}'" for problem in sorted(found - shape.problems.keys())]
    wrong += [f"nothing finds '{problem}'" for problem in sorted(shape.problems.keys() - found)]
    named = {*shape.problems.values(), *shape.anywhere, *(kind for row in shape.never.values() for kind in row)}
    wrong += [f"no kind '{kind}'" for kind in sorted(named - shape.kinds.keys())]
    if wrong:
        raise KnowledgeError(wrong[0], where=str(path), hint="every problem that a finding names has one of the kinds")
    return shape


def cells_of(base: RuleBase, garment: Garment, shape: ProblemsShape) -> tuple[Cell, ...]:
    """Every cell of a garment's table, place by place."""
    finds = [card for _, card in sorted(base.rules.items()) if isinstance(card, Find)]
    cells: list[Cell] = []
    for place in garment.places.values():
        here = {card.problem for card in finds if _may_be_found(garment, place, card)}
        for kind in shape.kinds:
            problems = tuple(sorted(name for name in here if shape.problems[name] == kind))
            fixes = sorted({fix for name in problems for fix in _answers(base, garment, place, name)})
            never = shape.never.get(place.role, {}).get(kind, "")
            elsewhere = next((p.name for p in garment.places.values() if p.role == shape.anywhere.get(kind)), "")
            cells.append(Cell(place.name, kind, problems, tuple(fixes), never, elsewhere))
    return tuple(cells)


def _may_be_found(garment: Garment, place: Place, card: Find) -> bool:
    """Whether the card's conditions can all be met in the garment, the one that names the place by this place."""
    return all(_can_be(garment, place, card, pattern) for pattern in _patterns(card))


def _answers(base: RuleBase, garment: Garment, place: Place, problem: str) -> Iterator[str]:
    """The fixes that some answer offers for a problem at this place."""
    for card in base.rules.values():
        if not isinstance(card, Answer) or card.problem != problem or card.role not in ("", place.role):
            continue
        if all(_can_be(garment, place, card, pattern) for pattern in _patterns(card)):
            yield card.fix


def _patterns(card: Card) -> Iterator[SlotFact]:
    """The patterns there must be a fact for."""
    for condition in card.when:
        element = condition.element
        if isinstance(element, Measure | Trait | Joined):
            yield element


def _can_be(garment: Garment, place: Place, card: Card, pattern: SlotFact) -> bool:
    """Whether the garment has what a pattern asks for; a pattern that binds `place` must be met by this place."""
    own = str(getattr(pattern.get("place", None), "__bind__", None) or "") == "place"
    offered = _of_joins(garment) if isinstance(pattern, Joined) else _of_keys(garment)
    return any(
        (not own or seen["place"] == place.name)
        and all(_allows(pattern, slot, word) for slot, word in seen.items() if slot != "place")
        and (not own or _tests_hold(card, seen))
        and (not isinstance(pattern, Trait) or _says(garment, seen, pattern))
        for seen in offered
    )


def _says(garment: Garment, seen: Mapping[str, str], pattern: Trait) -> bool:
    """Whether a state of the garment can ever have a word that the pattern asks for."""
    words = garment.allowed.get(f"{seen['place']}.{seen['slot']}", ())
    return any(_allows(pattern, "word", word) for word in words)


def _of_keys(garment: Garment) -> Iterator[Mapping[str, str]]:
    """Place, role and slot of everything that is known or done in a garment."""
    for key in sorted(garment.names):
        place = garment.places[place_of(key)]
        yield {"place": place.name, "role": place.role, "slot": slot_of(key)}


def _of_joins(garment: Garment) -> Iterator[Mapping[str, str]]:
    """The same of its joins, with their kind and what they join to."""
    for join, _ in garment.joins:
        place, other = garment.places[place_of(join.a)], garment.places[place_of(join.b)]
        seen = {"place": place.name, "role": place.role, "slot": slot_of(join.a)}
        yield {**seen, "kind": join.kind, "relation": join.relation, "other_role": other.role}


def _tests_hold(card: Card, seen: Mapping[str, str]) -> bool:
    """Whether the card's tests on role and slot alone hold; those on anything else may hold."""
    bound = {name: seen[name] for name in ("role", "slot")}
    return all(
        _asks(test) - bound.keys() or test(**{name: bound[name] for name in _asks(test)}) for test in _tests(card)
    )


def _tests(card: Card) -> Iterator[Callable[..., bool]]:
    for condition in card.when:
        if condition.test is not None:
            yield condition.test


def _asks(test: Callable[..., bool]) -> set[str]:
    return set(inspect.signature(test).parameters)


def _allows(pattern: SlotFact, slot: str, word: str) -> bool:
    """Whether a pattern lets `word` stand in a slot: its literal, one of its words, or anything."""
    value = pattern.get(slot, word)
    if isinstance(value, P):
        return bool(value.match(word))
    return not isinstance(value, str) or value == word


def matrix_lines(base: RuleBase, garments: tuple[str, ...]) -> list[str]:
    """The tables of these garments, with what the marks mean."""
    shape = read_problems(base)
    columns = [kind for kind in shape.kinds if kind != ASIDE]
    lines = para("How many ways the rules know to meet each kind of trouble at each place, leaving it among them.")
    lines += bullets(f"{kind}: {words}" for kind, words in shape.kinds.items() if kind != ASIDE)
    lines += para(
        "^ is told at a place of its own, wherever it is (the stain, the worn place). x is met at another place, or "
        "not at all, as the lines below a table say. A point: the rules know nothing of it."
    )
    for id in garments:
        garment = base.garment(id)
        cells = cells_of(base, garment, shape)
        lines += [*heading(garment.title), " " * NAME + "".join(f" {kind[:4]:>{CELL - 1}}" for kind in columns)]
        for place in garment.places.values():
            row = {cell.kind: cell for cell in cells if cell.place == place.name}
            if any(row[kind].fixes for kind in columns):
                marks = "".join(f"{row[kind].mark:>{CELL}}" for kind in columns)
                lines.append(f"{_called(place):<{NAME}}{marks}")
        lines += _beneath(garment, cells)
    return lines


def _called(place: Place) -> str:
    return place.words.removeprefix("the ")[:NAME]


def _beneath(garment: Garment, cells: tuple[Cell, ...]) -> list[str]:
    """What is settled before or after, and every written cannot."""
    aside = [f"{_called(garment.places[c.place])} {len(c.fixes)}" for c in cells if c.kind == ASIDE and c.fixes]
    lines = para(f"Before or after all work: {', '.join(aside)}.", 2) if aside else []
    never: dict[str, list[str]] = {}
    for cell in (cell for cell in cells if cell.mark == "x"):
        never.setdefault(f"{_called(garment.places[cell.place])}: {cell.never}", []).append(cell.kind)
    return lines + bullets(f"{words} ({' and '.join(kinds)})" for words, kinds in never.items())


def matrix_data(base: RuleBase, garments: tuple[str, ...]) -> dict[str, Any]:
    """The same for programs, with every problem, fix and grade."""
    shape = read_problems(base)
    return {
        "version": 1,
        "kinds": shape.kinds,
        "garments": {
            id: [_cell_data(base, cell) for cell in cells_of(base, base.garment(id), shape) if cell.mark != "."]
            for id in garments
        },
    }


def _cell_data(base: RuleBase, cell: Cell) -> dict[str, Any]:
    fixes = {
        id: {"difficulty": fix.difficulty, "durability": fix.durability, "visibility": fix.visibility}
        for id, fix in ((id, base.fixes[id]) for id in cell.fixes)
    }
    return {
        "place": cell.place,
        "kind": cell.kind,
        "problems": list(cell.problems),
        "rungs": len(cell.fixes),
        "leave": LEAVE in cell.fixes,
        "fixes": fixes,
        "elsewhere": cell.elsewhere or None,
        "never": cell.never or None,
    }
