"""Reading `KEY=VALUE` as a person types it: the question's name or its key, and an answer in words or as a length."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from advisor.core.case import Answer, Case, Known
from advisor.core.model import Key
from advisor.core.question import Question
from advisor.errors import AdvisorError, UsageError, nearest
from advisor.interview.typed import read_answer
from advisor.rulebase.base import RuleBase
from advisor.words import Teller


def read_supposed(base: RuleBase, case: Case, teller: Teller, typed: Iterable[str]) -> dict[Key, Answer]:
    """The answers supposed, by key. UsageError or LengthError name what is near."""
    questions, found = base.asked(case), dict[Key, Answer]()
    for word in typed:
        name, mark, text = word.partition("=")
        if not mark or not text.strip():
            hint = 'write KEY=VALUE, as "cloth pinned out at the waist=1 in"'
            raise UsageError(f"'{word}' gives no value", hint=hint)
        question = question_named(questions, name)
        if question.key in found:
            raise UsageError(f"'{question.name}' is given twice", hint="give each once")
        found[question.key] = _read(question, text.strip(), teller)
    return found


def question_named(questions: Mapping[Key, Question], name: str) -> Question:
    """The question with this key or name. UsageError names the nearest."""
    wanted = " ".join(name.split()).casefold()
    named: dict[str, Question] = {}
    for key, question in questions.items():
        named.setdefault(question.name.casefold(), question)
        named[key.casefold()] = question
    if wanted in named:
        return named[wanted]
    hint = nearest(wanted, named)
    raise UsageError(f"nothing is asked about '{name.strip()}'", hint=hint)


def _read(question: Question, text: str, teller: Teller) -> Answer:
    meanings = {meaning.casefold(): word for word, meaning in question.words.items()}
    try:
        answer = read_answer(question, meanings.get(text.casefold(), text), teller)
    except UsageError:
        known = [*question.words.values(), *question.words]
        raise UsageError(f"'{text}' is no answer to '{question.name}'", hint=_words(text, known, question)) from None
    except AdvisorError as fault:
        fault.where = fault.where or question.name
        raise
    return answer


def _words(text: str, known: Iterable[str], question: Question) -> str:
    near = nearest(text, known)
    return near if near.startswith("did you") else "it may be: " + ", ".join(f"'{w}'" for w in question.words.values())


def supposing(case: Case, supposed: Mapping[Key, Answer]) -> Case:
    """The case with these in place of its answers; where the value is the same, her answer stays as it is."""
    answers = dict(case.answers)
    for key, answer in supposed.items():
        held = answers.get(key)
        same = isinstance(held, Known) and isinstance(answer, Known) and held.value == answer.value
        if not same:
            answers[key] = answer
    return replace(case, answers=answers)
