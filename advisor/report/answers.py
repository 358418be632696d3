"""The answers so far as lines: by place, in the order one meets them, and what no longer matters."""

from advisor.advise.world import meant
from advisor.core.case import Answer, Case, Known, Unknown
from advisor.core.question import Question
from advisor.report.advice import teller_of
from advisor.report.lines import heading, para
from advisor.rulebase.base import RuleBase
from advisor.words import Teller, capital

HOW = {"pinned": " (pinned)", "measured": " (measured)", "told": ""}


def answer_lines(base: RuleBase, case: Case) -> list[str]:
    """Every answer with how it is known."""
    garment, teller = base.garment(case.garment), teller_of(base, case)
    given = {key: answer.value for key, answer in case.answers.items() if isinstance(answer, Known)}
    lines = heading("Answered so far")
    for key, question in base.asked(case).items():
        answer = case.answers.get(key)
        if answer is None:
            continue
        told = told_answer(question, teller, answer)
        idle = "" if meant(garment, key, given) else " [no longer matters]"
        lines += para(f"{capital(question.name)}: {told}{idle}", 2, "- ")
    return lines if case.answers else [*lines, "Nothing yet."]


def told_answer(question: Question, teller: Teller, answer: Answer) -> str:
    """One answer in words, with how it is known."""
    if isinstance(answer, Unknown):
        return "cannot say"
    if isinstance(answer.value, str) and question.kind != "word":
        return answer.told or "as the other"
    if isinstance(answer.value, str):
        return question.words.get(answer.value, answer.value)
    return teller.value(answer.value) + (f" ({answer.told})" if answer.told else HOW[answer.how])
