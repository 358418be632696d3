"""Playing an interview with the answers of a case: what she answers that the case does not tell is "nothing to see"."""

from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

from advisor.advise.follow import follow
from advisor.advise.world import world_of
from advisor.casefile import answered, read_case
from advisor.core.case import Answer, Case, Known, Unknown
from advisor.core.question import Question
from advisor.interview.agenda import Due, next_question
from advisor.interview.over import Picks, looked_over
from advisor.rulebase.base import the_base

BASE = the_base()
CASES = tuple(sorted((Path(__file__).parents[2] / "cases").glob("*.toml")))


def full_case(path: Path) -> Case:
    """A case of the project as its file tells it."""
    return read_case(path, BASE.questions()).case


def bare(full: Case) -> Case:
    """The case before anything was answered."""
    return replace(full, answers={}, choices={}, log=())


def said(full: Case, question: Question) -> Answer:
    """What she answers: what the case tells; else that there is nothing to see, or that she cannot say."""
    if question.key in full.answers:
        return full.answers[question.key]
    if isinstance(question.neutral, str) or question.neutral == 0 or not question.evidence:
        return Known(question.neutral)
    return Unknown()


def differs(full: Case, question: Question) -> bool:
    """Whether what the case tells is another thing than the usual."""
    answer = said(full, question)
    if isinstance(answer, Unknown):
        return False
    if question.kind != "word" and isinstance(question.neutral, str):
        other = BASE.garment(full.garment).questions.get(question.neutral)
        return answer.value not in (question.neutral, other and getattr(said(full, other), "value", None))
    return answer.value != question.neutral


def one_step(full: Case, case: Case, due: Due) -> Case:
    """The case after what is due was answered as `full` tells."""
    if due.over is None:
        return answered(case, due.question.key, said(full, due.question), "2026-11-25T09:30:00")
    known = due.over.look.untold == "usual"
    seen = {q.key for q in due.over.items if (differs(full, q) if known else said(full, q) != Unknown())}
    return looked_over(case, due.over, Picks(frozenset(seen)), "2026-11-25T09:30:00")


def with_choices(full: Case, case: Case) -> Case:
    """The case with a choice for every finding: that of `full`, else the first in rank."""
    world = world_of(case, BASE.garment(case.garment))
    return replace(case, choices={**follow(BASE, world, full.choices, case.limits).advice.choices})


def play(full: Case) -> Iterator[tuple[Case, Due | None]]:
    """Each state of the interview with what is due in it: deciding questions, the choices, then the numbers."""
    case, chose = bare(full), False
    while True:
        due = next_question(BASE, case)
        if not chose and (due is None or not due.decides):
            case, chose = with_choices(full, case), True
            continue
        yield case, due
        if due is None:
            return
        case = one_step(full, case, due)
