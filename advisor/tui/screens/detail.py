"""One option in full, for the Options screen: risks first, then what it comes to, or what rules it out."""

from advisor.advise.flips import OnlyIf
from advisor.core.advice import Advice
from advisor.core.case import Case
from advisor.core.work import Option
from advisor.report.advice import condition, minutes, teller_of
from advisor.report.lines import bullets, para
from advisor.rulebase.base import RuleBase

WARNINGS = 3
GRADES = (("difficulty", "Difficulty"), ("durability", "Lasts"), ("visibility", "Shows"))


def risk_words(option: Option) -> str:
    """In a few words, that some of its work cannot be undone; empty if all of it can."""
    final = any(not op.reversible for op in option.work.ops)
    return "cannot be undone" if final else ""


def risk_lines(option: Option) -> list[str]:
    """What to make sure of before what cannot be undone, then the cautions: WARNINGS at most, then how many more."""
    checks = dict.fromkeys(op.check_before for op in option.work.ops if not op.reversible and op.check_before)
    told = [f"Before the step that cannot be undone: make sure that {check}." for check in checks]
    told += [f"Mind: {caution}" for caution in option.cautions]
    more = len(told) - WARNINGS
    return bullets(told[:WARNINGS], 0) + (para(f"And {more} more, in the plan.") if more > 0 else [])


def detail_lines(
    base: RuleBase, case: Case, advice: Advice, option: Option, suggested: bool, hanging: tuple[OnlyIf, ...]
) -> list[str]:
    """Everything about one option, in the order one needs it."""
    teller, questions = teller_of(base, case), base.asked(case)
    held, lines = advice.choices.get(option.finding), list[str]()
    if held and held.fix == option.fix and not suggested and held.reason:
        lines += para(f"Your reason: {held.reason}")
    lines += [row for ruling in option.rulings for row in para(f"Ruled out: {ruling.words}")]
    lines += para("w tells what would change that.") if option.rulings else risk_lines(option)
    for item in hanging:
        name = questions[item.key].name
        lines += para(f"You cannot say: {name}. This stands only if it {condition(teller, questions[item.key], item)}.")
    lines += para(option.reason)
    if option.closes and not option.rulings:
        lines += grade_lines(base, option)
        lines += para(f"Time: {minutes(option.minutes.least, option.minutes.most)}.")
        if option.work.leaves:
            lines += para(f"It leaves {teller.value(option.work.leaves)} undone.")
    if option.dominated_by:
        lines += para("Another option is at least as good on every count.")
    return lines


def grade_lines(base: RuleBase, option: Option) -> list[str]:
    """The three grades with what they mean, and what moved them here."""
    lines = []
    for axis, name in GRADES:
        grade = getattr(option.grades, axis)
        lines += para(f"{name}: {grade} of 5, {base.grades.meaning(axis, grade)}.")
    return lines + [row for because in option.grades.because for row in para(f"Here {because}.")]


def idle_line(advice: Advice) -> str:
    """That choices are kept for what is not wrong now; empty if there are none."""
    count = len(advice.idle)
    return f"Kept, but not needed now: {count} choice{'s' * (count > 1)} for what is no longer wrong." if count else ""
