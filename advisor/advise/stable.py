"""How firmly the first plan stands: which answers, were they otherwise, would change it, and from what amount on.

The plan is another one when other fixes are taken, when a finding comes or goes, or when a fix she chose is ruled
out. Numbers and steps that follow the amounts do not make it another one.
"""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from fractions import Fraction

from advisor.advise.record import stood
from advisor.advise.sweep import outcome
from advisor.advise.world import World, world_of
from advisor.core.case import Case, FindingId, Stood
from advisor.core.model import Key, Mm
from advisor.core.question import Question
from advisor.lengths import on_tape
from advisor.rulebase.base import RuleBase

REACH = 64
"""How many marks of the tape either way are looked at: 4 in, or 64 mm; who is further off has read another line."""

_STEPS = (1, 2, 3, 4, 6, 8, 12, 16, 20, 24, 28, 32, 40, 48, 56, REACH)

Taken = tuple[tuple[FindingId, str, bool], ...]


@dataclass(frozen=True)
class Upset:
    """An amount at which the plan becomes another one: the nearest on its side. `by`: how far off that is, mm."""

    at: Mm
    by: Mm
    then: dict[FindingId, Stood]


@dataclass(frozen=True)
class Amount:
    """A measured amount: the nearest upsets below and above it; None where none is within reach."""

    key: Key
    mm: Mm
    below: Upset | None
    above: Upset | None

    @property
    def nearest(self) -> Upset | None:
        """The nearer of the two; the one below of two as near."""
        found = [upset for upset in (self.below, self.above) if upset is not None]
        return min(found, key=lambda upset: (upset.by, upset.at), default=None)


@dataclass(frozen=True)
class Word:
    """An answer in words: those answers that would make it another plan, each with how things would stand."""

    key: Key
    word: str
    others: int
    upsets: tuple[tuple[str, dict[FindingId, Stood]], ...]


@dataclass(frozen=True)
class Stability:
    """The most fragile first. `firm`: what can be off, or otherwise, and the plan stands all the same."""

    now: dict[FindingId, Stood]
    amounts: tuple[Amount, ...]
    words: tuple[Word, ...]
    firm: tuple[Key, ...]


def stability(base: RuleBase, case: Case) -> Stability:
    """What would upset the first plan of `case`."""
    garment, watch = base.garment(case.garment), _Watch(base, case)
    world = world_of(case, garment)
    given = [question for key, question in garment.questions.items() if key in world.given]
    amounts = [_amount(watch, world, question) for question in given if question.kind != "word"]
    words = [_word(watch, world, question) for question in given if question.kind == "word"]
    firm = {amount.key for amount in amounts if not amount.nearest} | {word.key for word in words if not word.upsets}
    # Sorting keeps what is as fragile in the order of the questions.
    return Stability(
        now=watch.stood(None, None),
        amounts=tuple(sorted((a for a in amounts if a.nearest), key=lambda a: a.nearest.by if a.nearest else 0)),
        words=tuple(sorted((w for w in words if w.upsets), key=lambda w: -Fraction(len(w.upsets), w.others))),
        firm=tuple(question.key for question in given if question.key in firm),
    )


class _Watch:
    """What the plan would be, were one answer otherwise."""

    def __init__(self, base: RuleBase, case: Case) -> None:
        self.base, self.case = base, case
        self.now = self.taken(None, None)

    def stood(self, key: Key | None, value: Mm | str | None) -> dict[FindingId, Stood]:
        """How every finding would stand."""
        suppose = {key: value} if key is not None and value is not None else {}
        return stood(outcome(self.base, self.case, suppose)[0].advice)

    def taken(self, key: Key | None, value: Mm | str | None) -> Taken:
        """What would be done about what."""
        return taken(self.stood(key, value))

    def upsets(self, key: Key, value: Mm | str) -> bool:
        """Whether the plan would be another one."""
        return self.taken(key, value) != self.now


def taken(found: dict[FindingId, Stood]) -> Taken:
    """The plan by which two are told apart: each finding, the fix taken for it, whether that may be taken."""
    return tuple(sorted((id, each.took, each.took in each.stood) for id, each in found.items()))


def _word(watch: _Watch, world: World, question: Question) -> Word:
    now = str(world.given[question.key])
    others = [word for word in question.words if word != now]
    upsets = tuple((word, watch.stood(question.key, word)) for word in others if watch.upsets(question.key, word))
    return Word(question.key, now, max(1, len(others)), upsets)


def _amount(watch: _Watch, world: World, question: Question) -> Amount:
    now = world.given[question.key]
    assert isinstance(now, Fraction)
    sides = [_nearest(watch, question, now, list(_marks(world, question, now, sign))) for sign in (-1, 1)]
    return Amount(question.key, now, *sides)


def _marks(world: World, question: Question, now: Mm, sign: int) -> Iterator[Mm]:
    """The marks of the tape on one side of `now`, outward, as far as is looked at and can be answered."""
    mark = world.tape.mark
    first = on_tape(now, world.tape)
    start = 0 if (first - now) * sign > 0 else 1
    for count in range(start, start + REACH):
        value = first + sign * count * mark
        if question.least <= value <= question.most:
            yield value


def _nearest(watch: _Watch, question: Question, now: Mm, marks: list[Mm]) -> Upset | None:
    """The nearest of these marks at which the plan is another one, looked for in growing strides, then by halves."""

    def upsets(index: int) -> bool:
        return watch.upsets(question.key, marks[index])

    last = -1
    for index in _strides(len(marks)):
        if upsets(index):
            at = marks[_first(last, index, upsets)]
            return Upset(at, abs(at - now), watch.stood(question.key, at))
        last = index
    return None


def _strides(count: int) -> list[int]:
    return [step - 1 for step in _STEPS if step < count] + ([count - 1] if count else [])


def _first(calm: int, upset: int, upsets: Callable[[int], bool]) -> int:
    """The first index that upsets, between one that does not and one that does."""
    while upset - calm > 1:
        middle = (calm + upset) // 2
        if upsets(middle):
            upset = middle
        else:
            calm = middle
    return upset
