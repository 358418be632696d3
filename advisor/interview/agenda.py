"""Which question comes next: one that can still change the advice, in the order one meets things.

Deciding questions can change which fixes there are, their order, cautions or steps. Sizing questions come
after the choice and can change only the numbers of the plan. All others are not asked.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cached_property

from advisor.advise.follow import follow
from advisor.advise.kept import Kept
from advisor.advise.relevant import fed_by, readable
from advisor.advise.sweep import Signature, grid, outcome, signature
from advisor.advise.world import World, world_of
from advisor.core.advice import Advice
from advisor.core.case import Case, Known
from advisor.core.model import Key, Value
from advisor.core.question import Question
from advisor.lengths import TAPES
from advisor.rulebase.base import RuleBase


@dataclass(frozen=True)
class Due:
    """A question that is due, and whether it decides between fixes or only sizes the plan."""

    question: Question
    decides: bool


def next_question(base: RuleBase, case: Case, skip: frozenset[str] = frozenset()) -> Due | None:
    """The next question worth asking; None if no single answer could change anything.

    `skip` holds keys put off for now.
    """
    return next((due for due in search(base, case, skip) if due is not None), None)


def search(base: RuleBase, case: Case, skip: frozenset[str] = frozenset()) -> Iterator[Due | None]:
    """The questions worth asking as they are found, all deciding ones first; None for each looked at in vain.

    One step takes as long as one look at one question, so that who waits can show how far it is, or stop.
    """
    rest: list[Question] = []
    for question in _open_questions(base, case, skip):
        if decides(base, case, question):
            yield Due(question, True)
        else:
            rest.append(question)
            yield None
    for question in rest:
        yield Due(question, False) if sizes(base, case, question) else None


def deciding(base: RuleBase, case: Case) -> tuple[Question, ...]:
    """All questions that could still change the advice, were each the only one answered."""
    return tuple(q for q in _open_questions(base, case, frozenset()) if decides(base, case, q))


def _open_questions(base: RuleBase, case: Case, skip: frozenset[str]) -> Iterator[Question]:
    for key, question in base.asked(case).items():
        if key not in case.answers and key not in skip and _asked_now(case, question):
            yield question


def _asked_now(case: Case, question: Question) -> bool:
    """Whether what the question comes after is settled in its favor, or cannot be said."""
    for gate, words in question.after:
        answer = case.answers.get(gate)
        if answer is None or (isinstance(answer, Known) and answer.value not in words):
            return False
    return True


@dataclass(frozen=True, eq=False)
class _Stand:
    """A case as it stands: what every question about it is held against."""

    base: RuleBase
    case: Case
    world: World

    @cached_property
    def advice(self) -> Advice:
        """The advice followed to its end."""
        return follow(self.base, self.world, self.case.choices, self.case.limits, told=False).advice

    @cached_property
    def mark(self) -> Signature:
        """Its signature."""
        followed = follow(self.base, self.world, self.case.choices, self.case.limits, told=False)
        return signature(followed, self.world)

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
_stands: Kept[_Stand] = Kept(8)


def _stand(base: RuleBase, case: Case) -> _Stand:
    token = (base, id(case))
    return _stands.get(token) or _stands.put(token, _Stand(base, case, world_of(case, base.garment(case.garment))))


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
    stand = _stand(base, case)
    return any(outcome(base, case, suppose)[1] != stand.mark for suppose in _supposings(stand, question))


def _supposings(stand: _Stand, question: Question) -> Iterator[dict[Key, Value]]:
    """Every answer to try: the question's own, and those to the questions that come after it."""
    if stand.may_matter(question.key):
        yield from ({question.key: value} for value in stand.values(question))
    for other in stand.world.garment.questions.values():
        for gate, words in other.after:
            if gate == question.key and stand.may_matter(other.key):
                yield from ({gate: word, other.key: value} for word in words for value in stand.values(other))


def sizes(base: RuleBase, case: Case, question: Question) -> bool:
    """Whether some answer gives the plan other numbers than it has now."""
    stand = _stand(base, case)
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


def why_asked(base: RuleBase, case: Case, question: Question) -> tuple[str, ...]:
    """What hangs on the answer, in words: per kind of answer, what it would bring or rule out."""
    now = _standing(_stand(base, case).advice)
    lines: list[str] = []
    for value in grid(question, TAPES[case.tape]):
        then = _standing(outcome(base, case, {question.key: value})[0].advice)
        for line in [
            *(f"brings in: {t}" for t in sorted(then - now)),
            *(f"rules out: {t}" for t in sorted(now - then)),
        ]:
            if line not in lines:
                lines.append(line)
    return tuple(lines)


def _standing(advice: Advice) -> set[str]:
    fixes = {option.title[:1].lower() + option.title[1:] for option in advice.options if option.open}
    return fixes | {f"the finding: {finding.title[:1].lower()}{finding.title[1:]}" for finding in advice.findings}
