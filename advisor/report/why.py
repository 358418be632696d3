"""Why, and why not: the trace told in words, two levels first, the whole tree on demand."""

from collections.abc import Iterable

from advisor.advise.flips import Flip
from advisor.core.advice import Advice
from advisor.core.case import Case
from advisor.core.work import Finding, Option
from advisor.report.advice import teller_of
from advisor.report.lines import heading, para
from advisor.rulebase.base import RuleBase
from advisor.rulebase.sources import source_line

SHALLOW = 2
ALL = 1000


def why_lines(
    base: RuleBase, case: Case, advice: Advice, item: Finding | Option, flips: Iterable[Flip], deep: bool
) -> list[str]:
    """Why a finding is there, why an option is offered, or why it is ruled out and what would change that."""
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
    lines += [line for because in item.grades.because for line in para(f"Graded here {because}.")]
    return lines + tree_lines(base, advice, item.node, deep)


def tree_lines(base: RuleBase, advice: Advice, node: str, deep: bool) -> list[str]:
    """The trace below a node, indented."""
    lines: list[str] = []
    shown = list(advice.trace.walk(node, ALL if deep else SHALLOW))
    for depth, found in shown:
        mark = f" [{source_line(found.source, base.sources)}]" if found.source and found.source != "case" else ""
        lines += para(found.words + mark, 2 * depth, "- ")
    hidden = len(list(advice.trace.walk(node, ALL))) - len(shown)
    if hidden:
        lines.append(f"({hidden} more behind these; ask for all of it.)")
    return lines


def flip_lines(base: RuleBase, case: Case, flips: Iterable[Flip]) -> list[str]:
    """What would let a ruled-out option stand."""
    teller, questions = teller_of(base, case), base.asked(case)
    lines: list[str] = []
    for flip in flips:
        question = questions[flip.key]
        if isinstance(flip.value, str):
            lines += para(f"It would stand if {question.name} were '{question.words[flip.value]}'.", 2, "* ")
        else:
            side = "at least" if flip.upward else "at most"
            lines += para(f"It would stand if {question.name} were {side} {teller.value(flip.value)}.", 2, "* ")
    return lines or para("No single answer would let it stand.", 2)
