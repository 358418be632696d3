"""A choice made from the command line: which one is meant, and what it changes."""

from typing import Any

from advisor.core.advice import Advice
from advisor.core.case import Case, FindingId
from advisor.core.work import Finding, Option
from advisor.errors import UsageError
from advisor.report.advice import head_lines
from advisor.report.differences import Namer
from advisor.report.labels import option_at, pointed_at
from advisor.report.lines import para
from advisor.report.overrule import chosen_lines
from advisor.report.whatif import Change, change_data, change_lines


def meant(advice: Advice, case: Case, finding: str, fix: str, back: bool) -> tuple[FindingId, Option | None]:
    """The finding meant, and the option; None for a choice taken back. UsageError names what it may be."""
    if back and fix:
        raise UsageError("taking back needs no fix", hint="give the finding alone")
    item = pointed_at(advice, finding)
    about = item.id if isinstance(item, Finding) else item.finding
    if back:
        if about not in case.choices:
            raise UsageError("nothing was chosen there", hint="so nothing is to be taken back")
        return about, None
    if isinstance(item, Option):
        if fix and option_at(advice, about, fix).id != item.id:
            raise UsageError("the two name different fixes", hint="give the finding and one fix, as: 4 e")
        return about, item
    if not fix:
        raise UsageError("which fix?", hint="give its letter after the number of the finding, as: 4 e")
    return about, option_at(advice, about, fix)


def choice_lines(change: Change, about: FindingId, option: Option | None, reason: str) -> list[str]:
    """What was chosen, against what, and what it changes in the plan."""
    advice, lines = change.now.advice, [*head_lines(change.base, change.case), ""]
    name = Namer(change.base, change.case, advice, change.then.advice).finding(about)
    if option is None:
        return [*lines, *para(f"{name}: the choice is taken back."), *change_lines(change)]
    lines += para(f"{name}: {option.title}. It is saved.")
    for told in chosen_lines(change.then.advice, option, advice.choices[about]):
        lines += para(told, 2)
    return lines + change_lines(change)


def choice_data(change: Change, about: FindingId, option: Option | None, reason: str) -> dict[str, Any]:
    """The same for programs."""
    chosen = {"fix": option.fix, "title": option.title, "reason": reason} if option else None
    return {
        "version": 1,
        "title": change.case.title,
        "finding": about,
        "chosen": chosen,
        "against": [ruling.words for ruling in option.rulings] if option else [],
        **change_data(change),
    }
