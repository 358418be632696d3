"""Which question comes next: the one most able to change the advice for the time it takes to answer.

Deciding questions can change which fixes there are, their order, cautions or steps. Sizing questions come
after the choice and can change only the numbers of the plan. All others are not asked. What several questions
ask can often be seen at one look; such a look comes in their place.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction

from advisor.casefile import still_to_tell
from advisor.core.case import Case, Known
from advisor.core.model import Key
from advisor.core.question import Question
from advisor.interview.joint import together
from advisor.interview.over import Over, grouped
from advisor.interview.stand import ENOUGH, decides, gain, sizes
from advisor.rulebase.base import RuleBase


@dataclass(frozen=True)
class Due:
    """What is due, and whether it decides between fixes or only sizes the plan.

    `over`: a look at which `question` and others are answered together; None if it is asked by itself.
    """

    question: Question
    decides: bool
    over: Over | None = None

    @property
    def keys(self) -> tuple[Key, ...]:
        """The keys it asks about."""
        return self.over.keys if self.over else (self.question.key,)

    @property
    def name(self) -> str:
        """What it is about, in a few words."""
        return self.over.look.name if self.over else self.question.name


def next_question(base: RuleBase, case: Case, skip: frozenset[str] = frozenset()) -> Due | None:
    """What is worth asking next; None if no answer could change anything.

    `skip` holds keys put off for now.
    """
    return next((due for due in search(base, case, skip) if due is not None), None)


def search(base: RuleBase, case: Case, skip: frozenset[str] = frozenset()) -> Iterator[Due | None]:
    """None for each question looked at; then what is worth asking, best first: all that decides, else all that sizes.

    One step takes as long as one look at one question, so that who waits can show how far it is, or stop.
    """
    asked = base.asked(case)
    for due in _search(base, case, skip):
        yield None if due is None else _put(asked, due)


def _put(asked: Mapping[Key, Question], due: Due) -> Due:
    """What is due as it is put to whoever reads the tape of the case."""
    over = due.over and Over(due.over.look, tuple(asked[key] for key in due.over.keys))
    return Due(asked[due.question.key], due.decides, over)


def _search(base: RuleBase, case: Case, skip: frozenset[str]) -> Iterator[Due | None]:
    questions = tuple(_open_questions(base, case, skip))
    found = []
    for question in questions:
        if decides(base, case, question):
            found.append(question)
        yield None
    if found:
        yield from _best_first(base, case, found)
        return
    for needed in together(base, case, skip):
        if needed is not None and (pair := [question for question in questions if question.key in needed]):
            yield Due(pair[0], True)
            return
        yield None
    for question in questions:
        if sizes(base, case, question):
            found.append(question)
        yield None
    yield from _best_first(base, case, found, decides=False)


def _best_first(base: RuleBase, case: Case, found: list[Question], decides: bool = True) -> Iterator[Due]:
    """What was begun is finished first; then comes what can change most for the time it takes, then the rest."""
    picked = still_to_tell(case)
    begun = [q for q in found if q.after and not q.look and _asked_now(case, q)]
    begun += sorted((q for q in found if q.key in picked), key=lambda q: picked.index(q.key))
    yield from (Due(question, decides) for question in begun)
    overs, alone = grouped(base.looks.values(), [q for q in found if q not in begun])
    dues = [Due(over.items[0], decides, over) for over in overs] + [Due(question, decides) for question in alone]
    worth = {due.keys: _worth(due, {}) for due in dues}
    weighed: dict[Key, int] = {}
    while dues:
        dues.sort(key=lambda due: (-worth[due.keys], due.question.rank, due.question.key))
        missing = [q for q in (dues[0].over.items if dues[0].over else (dues[0].question,)) if q.key not in weighed]
        if begun or not decides or not missing:
            break
        # At first all are thought to change as much as they have answers; what is then foremost is looked at closely.
        weighed.update((question.key, gain(base, case, question)) for question in missing)
        worth[dues[0].keys] = _worth(dues[0], weighed)
    yield from dues


def _worth(due: Due, gains: Mapping[Key, int]) -> Fraction:
    """How many other advices its answers lead to, at the most where that is not known, per second that it takes."""
    items = due.over.items if due.over else (due.question,)
    seconds = due.over.seconds if due.over else due.question.seconds
    most = (gains.get(q.key, min(ENOUGH, len(q.words) - 1 if q.words else ENOUGH)) for q in items)
    return Fraction(sum(most), max(1, seconds))


def deciding(base: RuleBase, case: Case) -> tuple[Question, ...]:
    """All questions that could still change the advice, were each the only one answered."""
    return tuple(q for q in _open_questions(base, case, frozenset()) if decides(base, case, q))


def _open_questions(base: RuleBase, case: Case, skip: frozenset[str]) -> Iterator[Question]:
    """The questions that may be asked now, in the order one meets them with the garment in hand."""
    questions = base.garment(case.garment).questions
    picked = still_to_tell(case)
    for key, question in questions.items():
        if key in case.answers or key in skip:
            continue
        if _asked_now(case, question) or (key not in picked and _seen_with(questions, case, question, skip)):
            yield question


def _asked_now(case: Case, question: Question) -> bool:
    """Whether what the question comes after is settled in its favor, or cannot be said."""
    return all(_settled(case, gate, words) for gate, words in question.after)


def _settled(case: Case, gate: Key, words: tuple[str, ...]) -> bool:
    answer = case.answers.get(gate)
    return answer is not None and not (isinstance(answer, Known) and answer.value not in words)


def _seen_with(questions: Mapping[Key, Question], case: Case, question: Question, skip: frozenset[str]) -> bool:
    """Whether it can be seen at the same look as what it comes after, should that be as usual."""
    if not question.look:
        return False
    picked = still_to_tell(case)
    for gate, words in question.after:
        before = questions.get(gate)
        if _settled(case, gate, words):
            continue
        if before is None or before.look != question.look or before.neutral not in words:
            return False
        if gate in case.answers or gate in skip or gate in picked or not _asked_now(case, before):
            return False
    return True
