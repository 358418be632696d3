"""Which question comes next: one that can still change the advice, in the order one meets things.

Deciding questions can change which fixes there are, their order, cautions or steps. Sizing questions come
after the choice and can change only the numbers of the plan. All others are not asked.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from advisor.advise.follow import follow
from advisor.advise.relevant import may_matter
from advisor.advise.sweep import grid, outcome, signature
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
    for key, question in base.garment(case.garment).questions.items():
        if key not in case.answers and key not in skip and _asked_now(case, question):
            yield question


def _asked_now(case: Case, question: Question) -> bool:
    """Whether what the question comes after is settled in its favor, or cannot be said."""
    for gate, words in question.after:
        answer = case.answers.get(gate)
        if answer is None or (isinstance(answer, Known) and answer.value not in words):
            return False
    return True


def decides(base: RuleBase, case: Case, question: Question) -> bool:
    """Whether some answer, or some answer to what is asked after it, gives another signature than stands now."""
    world = world_of(case, base.garment(case.garment))
    followed = follow(base, world, case.choices, case.limits, told=False)
    now = signature(followed, world)
    return any(
        outcome(base, case, suppose)[1] != now for suppose in _supposings(base, case, world, followed.advice, question)
    )


def _supposings(
    base: RuleBase, case: Case, world: World, advice: Advice, question: Question
) -> Iterator[dict[Key, Value]]:
    """Every answer to try: the question's own, and those to the questions that come after it."""
    tape = TAPES[case.tape]
    if may_matter(base, world, advice, question.key):
        yield from ({question.key: value} for value in grid(question, tape))
    for other in base.garment(case.garment).questions.values():
        for gate, words in other.after:
            if gate == question.key and may_matter(base, world, advice, other.key):
                yield from ({gate: word, other.key: value} for word in words for value in grid(other, tape))


def sizes(base: RuleBase, case: Case, question: Question) -> bool:
    """Whether some answer gives the plan other numbers than it has now."""
    world = world_of(case, base.garment(case.garment))
    followed = follow(base, world, case.choices, case.limits, told=False)
    if not may_matter(base, world, followed.advice, question.key):
        return False
    now = numbers(followed.advice)
    return any(
        numbers(outcome(base, case, {question.key: value})[0].advice) != now
        for value in grid(question, TAPES[case.tape])
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
    world = world_of(case, base.garment(case.garment))
    now = _standing(follow(base, world, case.choices, case.limits, told=False).advice)
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
