"""A case as it stands, and what could become of it: does an answer change the advice, how much, or only its numbers."""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property

from advisor.advise.follow import Followed, follow
from advisor.advise.kept import Kept
from advisor.advise.relevant import fed_by, readable
from advisor.advise.sweep import Outcome, Signature, grid, outcome, signature
from advisor.advise.world import World, world_of
from advisor.core.advice import Advice
from advisor.core.case import Case
from advisor.core.model import Key, Value
from advisor.core.question import Question
from advisor.lengths import TAPES
from advisor.rulebase.base import RuleBase

ENOUGH = 3
"""So many other signatures are enough to tell that a question can change much."""


@dataclass(frozen=True, eq=False)
class Stand:
    """A case as it stands: what every question about it is held against."""

    base: RuleBase
    case: Case
    world: World

    @cached_property
    def followed(self) -> Followed:
        """The advice followed to its end."""
        return follow(self.base, self.world, self.case.choices, self.case.limits, told=False)

    @property
    def advice(self) -> Advice:
        """The same without what was only suggested."""
        return self.followed.advice

    @cached_property
    def mark(self) -> Signature:
        """Its signature."""
        return signature(self.followed, self.world)

    @cached_property
    def numbers(self) -> tuple[object, ...]:
        """The numbers of its plan."""
        return numbers(self.advice)

    @cached_property
    def readable(self) -> frozenset[Key]:
        """The keys something in the advice reads."""
        return readable(self.base, self.world, self.advice)

    def may_matter(self, key: Key) -> bool:
        """Whether the advice could depend on `key` at all."""
        return not self.readable.isdisjoint(fed_by(self.world, key))

    def values(self, question: Question) -> list[Value]:
        """What may be answered, the likeliest to change something first, without what would leave the world as it is.

        Lengths from both ends inward by halves, because most rules ask whether a length is over some bound; words
        from the last, because the first is what is usual.
        """
        values = list(grid(question, TAPES[self.case.tape]))[::-1]
        if question.kind != "word":
            values = [values[at] for at in _halving(len(values))]
        if question.evidence or question.key in self.gates:
            # To be told what was taken for granted still changes what is worked out from it, or what means anything.
            return values
        model = self.world.model
        now = model.states[question.key] if question.kind == "word" else model.measures[question.key]
        return [value for value in values if value != now]

    @cached_property
    def gates(self) -> frozenset[Key]:
        """What the answers there are come after."""
        questions = self.world.garment.questions
        return frozenset(gate for key in self.world.given for gate, _ in questions[key].after)


# By the identity of the case, which is kept with it so that no other can take it.
_stands: Kept[Stand] = Kept(8)


def stand_of(base: RuleBase, case: Case) -> Stand:
    """The case as it stands; the same for the same case in hand."""
    token = (base, id(case))
    return _stands.get(token) or _stands.put(token, Stand(base, case, world_of(case, base.garment(case.garment))))


def _halving(count: int) -> list[int]:
    """0 to count - 1: the ends, the middle, the quarters ..."""
    order: dict[int, None] = dict.fromkeys((0, count - 1)) if count else {}
    step = count
    while len(order) < count:
        step = max(1, step // 2)
        order.update(dict.fromkeys(range(0, count, step)))
    return list(order)


def decides(base: RuleBase, case: Case, question: Question) -> bool:
    """Whether some answer, or some answer to what is asked after it, gives another signature than stands now."""
    stand = stand_of(base, case)
    return any(outcome(base, case, suppose)[1] != stand.mark for suppose in supposings(stand, question))


def gain(base: RuleBase, case: Case, question: Question) -> int:
    """How many other signatures its answers can give, up to `ENOUGH`."""
    marks: set[Signature] = set()
    for _, (_, mark) in turns(base, case, question):
        marks.add(mark)
        if len(marks) == ENOUGH:
            break
    return len(marks)


def turns(base: RuleBase, case: Case, question: Question) -> Iterator[tuple[Value, Outcome]]:
    """The answers that give another signature, with what they give: each word once, by itself or with what it brings.

    A word counts if it changes something by itself or with an answer to what is asked after it.
    """
    stand = stand_of(base, case)
    told: set[Value] = set()
    for suppose in supposings(stand, question):
        answer = suppose.get(question.key, "")
        if answer in told:
            continue
        then = outcome(base, case, suppose)
        if then[1] != stand.mark:
            told.add(answer)
            yield answer, then


def supposings(stand: Stand, question: Question) -> Iterator[dict[Key, Value]]:
    """Every answer to try: the question's own, and those to the questions that come after it."""
    if stand.may_matter(question.key):
        yield from ({question.key: value} for value in stand.values(question))
    for other in stand.world.garment.questions.values():
        for gate, words in other.after:
            if gate == question.key and stand.may_matter(other.key):
                yield from ({gate: word, other.key: value} for word in words for value in stand.values(other))


def sizes(base: RuleBase, case: Case, question: Question) -> bool:
    """Whether some answer gives the plan other numbers than it has now."""
    stand = stand_of(base, case)
    if not stand.may_matter(question.key):
        return False
    return any(
        numbers(outcome(base, case, {question.key: value})[0].advice) != stand.numbers
        for value in stand.values(question)
    )


def numbers(advice: Advice) -> tuple[object, ...]:
    """Every number of the chosen options' work."""
    return tuple(
        (option.id, op.id, name, figure.value)
        for option in advice.chosen()
        for op in option.work.ops
        for name, figure in sorted(op.figures.items())
    ) + tuple(
        (option.id, name, figure.value)
        for option in advice.chosen()
        for name, figure in sorted(option.work.figures.items())
    )


def sized_by(base: RuleBase, case: Case, question: Question) -> tuple[str, ...]:
    """The titles of the chosen ways of doing it whose numbers hang on the question."""
    stand = stand_of(base, case)
    now = set(stand.numbers)
    found: dict[str, None] = {}
    for value in stand.values(question) if stand.may_matter(question.key) else ():
        advice = outcome(base, case, {question.key: value})[0].advice
        changed = {number[0] for number in set(numbers(advice)) ^ now if isinstance(number, tuple)}
        found.update(dict.fromkeys(o.title[:1].lower() + o.title[1:] for o in advice.chosen() if o.id in changed))
    return tuple(found)
