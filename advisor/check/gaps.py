"""No amount of a problem falls between its options.

The amount is swept over a halving grid, down to a mark of the tape where two values differ. An option counts as
standing unless a condition of its answer on the amount alone is against it, or a veto that hangs on the amount alone:
everything else about the garment is taken at its best. That is done for any garment, and then for each word of each
state that one of the cards asks for, where only what lies between two amounts with an option is told. Where a veto
refuses in words, she reads why nothing stands: that is no gap.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import pairwise

from advisor.check.fault import Book
from advisor.check.material import Material
from advisor.check.offered import Spot, spots_of
from advisor.check.rungs import ANY, Line, Rung, State, closing, rungs_of
from advisor.check.trials import trials_of
from advisor.check.vocabulary import slots_of
from advisor.core.model import Mm
from advisor.knowledge.cards import Veto
from advisor.knowledge.facts import Trait
from advisor.lengths import INCH_TAPE, show

FOOT = 192  # marks: how far to sweep what was never found
HINT = "widen one of them, offer something else there, or let it be so"


@dataclass(frozen=True)
class Stretch:
    """Amounts at which nothing stands, in words, with the first of them; `inside` if options stand on both sides."""

    words: str
    first: int
    inside: bool


def check(material: Material, book: Book) -> None:
    """Every problem with an amount, at every role."""
    if {"answers", "vetoes", "fixes"} & material.unread:
        return
    known: dict[tuple[str, ...], tuple[Rung, ...]] = {}
    done: set[tuple[object, ...]] = set()
    for spot in spots_of(material):
        answers = closing(material, spot)
        # Most garments say nothing new: the same options, with the same states.
        key = spot.problem, spot.role, *(id for id, _ in answers)
        if key not in known:
            known[key] = rungs_of(material, spot, answers)
        rungs, most = known[key], _most(material, spot)
        states = _states(material, spot, rungs)
        if (key, states, most) not in done and any(line.asks_amount for line in _lines(rungs)):
            done.add((key, states, most))
            _look(material, book, spot, rungs, states, most)


def _look(
    material: Material, book: Book, spot: Spot, rungs: tuple[Rung, ...], states: tuple[State, ...], most: int
) -> None:
    anyway = list(stretches(rungs, ANY, most))
    found = [(stretch, ANY) for stretch in anyway]
    for state in _telling(rungs, states):
        found += [(each, state) for each in stretches(rungs, state, most) if each.inside and each not in anyway]
    for stretch, state in found:
        against = sorted({card for rung in rungs for card in rung.against(stretch.first, state)})
        if any(isinstance(material.rules[card], Veto) for card in against):
            continue
        where = f" where '{state[1]}' of the {state[0]} is '{state[2]}'" if state != ANY else ""
        what = f"nothing but leaving it stands {stretch.words} at a '{spot.role}'{where}"
        for id in spot.findings:
            line = material.line(id, keyword="amount")
            book.note(material.where(id), what, f"{', '.join(against)}: {HINT}", line)


def _telling(rungs: tuple[Rung, ...], states: tuple[State, ...]) -> Iterator[State]:
    """One of the states that come to the same, without those that come to nothing."""
    seen: set[tuple[object, ...]] = set()
    for state in states:
        lines = [line for line in _lines(rungs) if state[:2] in line.slots]
        effect: tuple[object, ...] = (state[:2], *(line.holds(1, state) for line in lines))
        if any(line.asks_amount for line in lines):
            effect = state
        if effect not in seen:
            seen.add(effect)
            yield state


def _lines(rungs: tuple[Rung, ...]) -> Iterator[Line]:
    for rung in rungs:
        yield from (rung.answer, *rung.vetoes)


def _most(material: Material, spot: Spot) -> int:
    """The largest amount that was found, in marks."""
    most: Mm = trials_of(material).most.get((spot.garment, spot.problem), Mm(0))
    return int(most / INCH_TAPE.mark) or FOOT


def _states(material: Material, spot: Spot, rungs: tuple[Rung, ...]) -> tuple[State, ...]:
    """Each word of each state on this garment that a card asks for."""
    roles = {place.role for place in material.garments[spot.garment].places.values()}
    slots = {(role, slot) for line in _lines(rungs) for role, slot in line.slots if role in roles}
    words = {(role, slot): slots_of(material, role, Trait).get(slot, ()) for role, slot in slots}
    return tuple(sorted((role, slot, word) for (role, slot), each in words.items() for word in each))


def stretches(rungs: tuple[Rung, ...], state: State, most: int) -> Iterator[Stretch]:
    """The stretches of amounts of up to `most` marks at which nothing stands."""
    seen = {marks: _standing(rungs, marks, state) for marks in halving(most)}
    swept = sorted(seen)
    for low, high in pairwise(swept):
        _between(low, high, rungs, state, seen)
    swept = sorted(seen)
    empty = {index for index, marks in enumerate(swept) if not seen[marks]}
    for first in sorted(index for index in empty if index - 1 not in empty):
        last = next(index for index in range(first, len(swept)) if index + 1 not in empty)
        yield _stretch(swept, first, last)


def halving(most: int) -> tuple[int, ...]:
    """Marks over 0 up to `most`: eighths of it, and the first eighth halved down to one mark."""
    marks = {most * part // 8 for part in range(1, 9)} | {most // 2**power for power in range(most.bit_length())}
    return tuple(sorted(marks - {0}))


def _standing(rungs: tuple[Rung, ...], marks: int, state: State) -> frozenset[str]:
    return frozenset(rung.fix for rung in rungs if not rung.against(marks, state))


def _between(low: int, high: int, rungs: tuple[Rung, ...], state: State, seen: dict[int, frozenset[str]]) -> None:
    """Halve between two amounts with different options until they are one mark apart."""
    if seen[low] == seen[high] or high - low <= 1:
        return
    middle = (low + high) // 2
    seen[middle] = _standing(rungs, middle, state)
    _between(low, middle, rungs, state, seen)
    _between(middle, high, rungs, state, seen)


def _stretch(swept: list[int], first: int, last: int) -> Stretch:
    begins, ends = (show(INCH_TAPE.mark * swept[index], INCH_TAPE) for index in (first, last))
    if first == 0 and last == len(swept) - 1:
        return Stretch("whatever the amount", swept[first], False)
    if first == 0:
        return Stretch(f"up to {ends}", swept[first], False)
    if last == len(swept) - 1:
        return Stretch(f"from {begins} on", swept[first], False)
    return Stretch(f"from {begins} to {ends}" if first != last else f"at {begins}", swept[first], True)
