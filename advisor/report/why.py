"""Why, and why not: the trace told in words, two levels first, the whole tree on demand."""

from collections.abc import Iterable

from advisor.advise.flips import Flip
from advisor.advise.rank import score, within
from advisor.core.advice import Advice
from advisor.core.case import Case, Known
from advisor.core.work import Finding, Option
from advisor.report.advice import minutes, past_limits, teller_of
from advisor.report.lines import heading, para
from advisor.rulebase.base import RuleBase
from advisor.rulebase.sources import MARKS, source_line
from advisor.words import capital

SHALLOW = 2
ALL = 1000


def why_lines(
    base: RuleBase, case: Case, advice: Advice, item: Finding | Option, flips: Iterable[Flip], deep: bool
) -> list[str]:
    """Why a finding is there, why an option stands where it does, or why it is ruled out and what would change that."""
    if isinstance(item, Finding):
        return [*heading(f"Why: {item.title}"), *tree_lines(base, advice, item.node, deep)]
    if item.rulings:
        lines = heading(f"Why not: {item.title}")
        for ruling in item.rulings:
            lines += tree_lines(base, advice, ruling.node, deep)
        return lines + flip_lines(base, case, flips)
    lines = heading(f"Why: {item.title}")
    lines += para(item.why)
    lines += para(f"Wrong when: {item.wrong_when}")
    lines += [line for because in item.grades.because for line in para(f"Graded here: {because}.")]
    lines += [line for told in rank_told(case, advice, item) for line in para(told)]
    return lines + tree_lines(base, advice, item.node, deep, f"{item.title}: ")


def rank_told(case: Case, advice: Advice, option: Option) -> list[str]:
    """Why an option that stands comes where it comes: first, or behind the first and by what."""
    first, *others = advice.options_for(option.finding)
    standing = [other for other in others if other.open]
    if option.id == first.id:
        return ["It is the first in rank." if standing else "Nothing else stands."]
    told = past_limits(option, case.limits)
    if told and within(first, case.limits):
        return told
    if option.closes < first.closes:
        return [f"It leaves things as they are; '{first.title}' puts them right."]
    if (option.work.leaves > 0) > (first.work.leaves > 0):
        return [f"It does not take all of it; '{first.title}' does."]
    told = [f"Behind '{first.title}': {_against(option, first)}."]
    better = next((other for other in advice.options if other.id == option.dominated_by), None)
    if better is not None:
        told.append(f"'{better.title}' is at least as good on every count.")
    elif score(option, case.limits) == score(first, case.limits):
        told.append("Weighed together they come out alike; then the easier goes first.")
    return told


def _against(option: Option, first: Option) -> str:
    one, two = option.grades, first.grades
    grades = (
        ("difficulty", one.difficulty, two.difficulty),
        ("lasts", one.durability, two.durability),
        ("shows", one.visibility, two.visibility),
    )
    told = [f"{name} {mine} and not {other}" for name, mine, other in grades if mine != other]
    if option.minutes != first.minutes:
        mine, other = (minutes(each.minutes.least, each.minutes.most) for each in (option, first))
        told += [f"{mine} and not {other}"] if mine != other else []
    return "; ".join(told) or "the two are graded alike"


def tree_lines(base: RuleBase, advice: Advice, node: str, deep: bool, known: str = "") -> list[str]:
    """The trace below a node, indented. `known` is what stands above already, and is left out of the first line.

    Every source is told with the whole tree; before that, that of the first line and the published ones.
    """
    lines: list[str] = []
    shown = list(advice.trace.walk(node, ALL if deep else SHALLOW))
    for depth, found in shown:
        told = found.source and found.source != "case" and (deep or not depth or found.source not in MARKS)
        mark = f" [{source_line(found.source, base.sources)}]" if told else ""
        words = found.words if depth else capital(found.words.removeprefix(known))
        lines += para(words + mark, 2 * depth, "- ")
    hidden = len(list(advice.trace.walk(node, ALL))) - len(shown)
    if hidden:
        lines.append(f"({hidden} more behind {'these' if hidden > 1 else 'this'}; ask for all of it.)")
    return lines


def flip_lines(base: RuleBase, case: Case, flips: Iterable[Flip]) -> list[str]:
    """What would let a ruled-out option stand."""
    teller, questions = teller_of(base, case), base.asked(case)
    lines: list[str] = []
    for flip in flips:
        question, held = questions[flip.key], case.answers.get(flip.key)
        now = held.value if isinstance(held, Known) else None
        if isinstance(flip.value, str):
            was = f" and not '{question.words[now]}'" if isinstance(now, str) else ""
            told = f"It would be offered with another answer to '{question.name}': '{question.words[flip.value]}'{was}."
        else:
            side = "on" if flip.upward else "down"
            is_now = f" (now {teller.value(now)})" if now is not None and not isinstance(now, str) else ""
            told = f"It would be offered from {teller.value(flip.value)} {side}: {question.name}{is_now}."
        lines += para(told, 2, "* ")
    return lines or para("No single other answer would have it offered.", 2)
