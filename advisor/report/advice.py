"""The advice as lines: findings, and for each its options in order of rank."""

from collections.abc import Iterable

from advisor.advise.flips import OnlyIf
from advisor.core.advice import Advice
from advisor.core.case import Case
from advisor.core.question import Question
from advisor.core.stages import STAGE_WORDS
from advisor.core.work import Finding, Option
from advisor.lengths import TAPES
from advisor.report.labels import finding_label, letter
from advisor.report.lines import bullets, heading, para
from advisor.rulebase.base import RuleBase
from advisor.words import Teller


def advice_lines(
    base: RuleBase, case: Case, advice: Advice, suggested: Iterable[str], hanging: Iterable[OnlyIf]
) -> list[str]:
    """Title, findings with their options, then what cannot be decided without an answer she could not give."""
    teller = teller_of(base, case)
    lines = [case.title, *para(base.garment(case.garment).title)]
    if not advice.findings:
        return [*lines, "", "Nothing is wrong, as far as it has been told."]
    guesses = set(suggested)
    for finding in advice.findings:
        lines += finding_lines(base, teller, advice, finding, finding.id in guesses)
    lines += hanging_lines(base, case, hanging)
    if advice.idle:
        lines += heading("Kept, but not needed now")
        lines += bullets("a choice for something that is no longer wrong" for _ in advice.idle)
    return lines


def teller_of(base: RuleBase, case: Case) -> Teller:
    """How values are said for this case."""
    return Teller(TAPES[case.tape], base.garment(case.garment).places)


def finding_lines(base: RuleBase, teller: Teller, advice: Advice, finding: Finding, guessed: bool) -> list[str]:
    """One finding and its options."""
    lines = heading(f"{finding_label(advice, finding)}. {finding.title} ({STAGE_WORDS[finding.stage]})")
    lines += para(finding.words)
    chosen = advice.choices.get(finding.id)
    for index, option in enumerate(advice.options_for(finding.id)):
        mark = ""
        if chosen and chosen.fix == option.fix:
            mark = " [suggested]" if guessed else " [chosen]"
        lines += option_lines(teller, option, f"{letter(index)}) ", mark)
        if mark == " [chosen]" and chosen and chosen.reason:
            lines += para(f"Your reason: {chosen.reason}", 5)
    if not advice.options_for(finding.id):
        lines += para("Nothing is known that would help.", 2)
    return lines


def option_lines(teller: Teller, option: Option, label: str, mark: str) -> list[str]:
    """One option: its grades, why, what it comes to; or why it is ruled out."""
    grades = option.grades
    lines = para(f"{option.title}{mark}", 2, label)
    if option.rulings:
        return lines + [line for ruling in option.rulings for line in para(f"Ruled out: {ruling.words}", 5)]
    if option.closes:
        lines += para(
            f"difficulty {grades.difficulty}, lasts {grades.durability}, shows {grades.visibility} (each 1 to 5); "
            f"{minutes(option.minutes.least, option.minutes.most)}",
            5,
        )
    lines += para(option.reason, 5)
    if option.work.leaves and option.closes:
        lines += para(f"It leaves {teller.value(option.work.leaves)} undone.", 5)
    lines += [line for because in grades.because for line in para(f"Here {because}.", 5)]
    if option.dominated_by:
        lines += para("Another option is at least as good on every count.", 5)
    return lines


def minutes(least: int, most: int) -> str:
    """A spread of minutes as a person says it."""
    if most < 90:
        return f"{least} to {most} minutes" if least != most else f"{least} minutes"
    return f"{hours(least)} to {hours(most)} hours"


def hours(count: int) -> str:
    """Minutes as hours to the quarter."""
    quarters = round(count / 15)
    whole, part = divmod(quarters, 4)
    fraction = {0: "", 1: "1/4", 2: "1/2", 3: "3/4"}[part]
    return " ".join(text for text in (str(whole) if whole or not fraction else "", fraction) if text)


def hanging_lines(base: RuleBase, case: Case, hanging: Iterable[OnlyIf]) -> list[str]:
    """What stands only for some values of something she cannot say."""
    questions = base.garment(case.garment).questions
    teller = teller_of(base, case)
    by_key: dict[str, list[OnlyIf]] = {}
    for item in hanging:
        by_key.setdefault(item.key, []).append(item)
    lines: list[str] = []
    for key, items in by_key.items():
        lines += heading(f"Not known: {questions[key].name}")
        for finding in dict.fromkeys(item.finding for item in items):
            lines += para(f"{finding}:", 2)
            lines += bullets(
                (f"{i.title}: only if it {condition(teller, questions[key], i)}" for i in items if i.finding == finding),
                4,
            )
        if questions[key].help:
            lines += para(f"To find out: {questions[key].help}", 2)
    return lines


def condition(teller: Teller, question: Question, item: OnlyIf) -> str:
    """`is at least 5 in`, `is between ...`, `is denim or ...`."""
    if item.words:
        return "is " + " or ".join(f"'{question.words[word]}'" for word in item.words)
    parts = []
    for least, most in item.runs:
        if least == question.least:
            parts.append(f"at most {teller.value(most)}")
        elif most == question.most:
            parts.append(f"at least {teller.value(least)}")
        else:
            parts.append(f"between {teller.value(least)} and {teller.value(most)}")
    return "is " + " or ".join(parts)
