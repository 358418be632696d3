"""The plans worth offering, compared: figures side by side, what changes between them, or which limit bites."""

from collections.abc import Iterable, Sequence
from fractions import Fraction
from typing import Any

from advisor.advise.front.naming import NAMES, Short
from advisor.advise.front.offers import Comparison, Offer, value_for
from advisor.core.case import Case
from advisor.errors import UsageError, nearest
from advisor.report.advice import fix_title, head_lines, hours
from advisor.report.data import VERSION, plan_data
from advisor.report.lines import bullets, heading, para, width_now
from advisor.rulebase.base import RuleBase

NARROW = 64
"""Below this width each plan's figures stand under its name, not beside it."""

GAP = 2
HEADS = ("Time", "Hardest", "Weakest", "Shows", "No way back")
MEANING = (
    "Time is the likely time, work that serves two things counted once. Hardest: the most difficult part; weakest: "
    "what lasts least; shows: what shows most; each from 1 to 5. No way back: steps that cannot be undone."
)
GO_ON = (
    "`advisor plan CASE --as quickest` prints one of them in full; `advisor plans CASE --take 1` puts one in the case."
)
LIMIT_WORDS = {
    "minutes": "time",
    "money": "money",
    "hardest": "the most difficult work you take on",
    "weakest": "how long it must last",
    "visible": "how much it may show",
    "cutting": "nothing that cannot be undone",
    "buttonholes": "no buttonholes by machine",
}


def plans_lines(base: RuleBase, case: Case, found: Comparison) -> list[str]:
    """The plans compared, or why there is none to offer."""
    lines = head_lines(base, case)
    if not found.offers:
        return [*lines, *none_lines(base, case, found)]
    if not any(offer.choices for offer in found.offers) and not found.offers[0].plan.advice.findings:
        return [*lines, "", "Nothing is wrong, as far as it has been told: there is nothing to plan."]
    lines += heading(_count(len(found.offers)))
    lines += table_lines(found.offers)
    lines += ["", *para(MEANING)]
    lines += money_lines(case, found.offers)
    lines += held_lines(found)
    lines += difference_lines(found)
    return [*lines, *left_lines(found.offers), "", *para(GO_ON)]


def _count(count: int) -> str:
    return "One plan worth offering" if count == 1 else f"{count} plans worth offering"


def table_lines(offers: Sequence[Offer]) -> list[str]:
    """One row for each plan; where there is no room for columns, its figures below its name."""
    rows = [_cells(offer) for offer in offers]
    if width_now() < NARROW:
        return [line for number, offer in enumerate(offers, 1) for line in _block(number, offer)]
    widths = [max(len(row[at]) for row in (HEADS, *rows)) for at in range(len(HEADS))]
    room = width_now() - 3 - sum(width + GAP for width in widths)
    lines = [" " * (3 + room) + _right(HEADS, widths)]
    for number, (offer, row) in enumerate(zip(offers, rows, strict=True), 1):
        first, *more = para(title(offer), 0, f"{number}. ", room + 3) or [""]
        lines += [first.ljust(3 + room) + _right(row, widths), *more]
    return lines


def _cells(offer: Offer) -> tuple[str, ...]:
    totals = offer.plan.totals
    grades = (totals.difficulty, totals.durability, totals.visibility, totals.irreversible)
    return (likely_time(totals.minutes.likely), *map(str, grades))


def likely_time(count: int) -> str:
    """Likely minutes, in hours where that is easier to picture."""
    return f"{count} min" if count < 90 else f"{hours(count)} h"


def _right(cells: Sequence[str], widths: Sequence[int]) -> str:
    return "".join(" " * GAP + cell.rjust(width) for cell, width in zip(cells, widths, strict=True))


def _block(number: int, offer: Offer) -> list[str]:
    return para(title(offer), 0, f"{number}. ") + para(figures(offer), 3)


def figures(offer: Offer) -> str:
    """A plan's figures in one line."""
    return ", ".join(f"{head.lower()} {cell}" for head, cell in zip(HEADS, _cells(offer), strict=True))


def title(offer: Offer) -> str:
    """What a plan is for; and whether it is the one that stands now."""
    names = ", ".join(offer.names)
    return f"{names[:1].upper()}{names[1:]}{' (as it stands now)' if offer.stands else ''}"


def money_lines(case: Case, offers: Sequence[Offer]) -> list[str]:
    """What each plan costs, as far as she said what things cost."""
    if not case.limits.prices:
        return []
    lines = heading("What it costs")
    for number, offer in enumerate(offers, 1):
        open_end = f", and what costs are not known of: {', '.join(offer.unpriced)}" if offer.unpriced else ""
        lines += para(f"{money(offer.money)}{open_end}", 2, f"{number}. ")
    return lines


def money(amount: Fraction) -> str:
    """An amount of money as it is written."""
    return f"{amount.numerator}" if amount.denominator == 1 else f"{float(amount):.2f}"


def held_lines(found: Comparison) -> list[str]:
    """The choices of hers that all plans keep."""
    if not found.held:
        return []
    chosen = {o.finding: o for offer in found.offers for o in offer.plan.advice.chosen()}
    lines = heading("Kept in all of them, as you chose it")
    return lines + bullets(chosen[finding].title for finding in found.held if finding in chosen)


def difference_lines(found: Comparison) -> list[str]:
    """What changes from plan to plan, finding by finding: only what differs. Of one alone, what it does."""
    if len(found.offers) == 1:
        return heading("What is done") + bullets(option.title for option in found.offers[0].plan.advice.chosen())
    if not found.differences:
        return []
    lines = heading("What changes between them")
    for row in found.differences:
        lines += para(f"{row.title}:", 0)
        for fix in dict.fromkeys(row.fixes):
            those = [str(number) for number, other in enumerate(row.fixes, 1) if other == fix]
            lines += para(fix or "does not come up", 2, f"{' and '.join(_listed(those))}: ")
    return lines


def _listed(words: Sequence[str]) -> list[str]:
    """All but the last joined by commas, so that "and" comes once."""
    return [", ".join(words[:-1]), words[-1]] if len(words) > 1 else list(words)


def left_lines(offers: Sequence[Offer]) -> list[str]:
    """What no plan closes, and what some leave."""
    remains = [{finding.id: finding.words for finding in offer.plan.remains} for offer in offers]
    if not any(remains):
        which = "it" if len(offers) == 1 else "each of them"
        return ["", *para(f"Worked through on paper, {which} leaves nothing open.")]
    lines = heading("What is left")
    for id, words in {id: words for each in remains for id, words in each.items()}.items():
        those = [str(number) for number, each in enumerate(remains, 1) if id in each]
        where = "" if len(those) == len(offers) else f"{' and '.join(_listed(those))}: "
        lines += para(words, 2, where or "- ")
    return lines


def none_lines(base: RuleBase, case: Case, found: Comparison) -> list[str]:
    """Which limits bite, and by how little."""
    lines = heading("No plan keeps your limits")
    if not found.short:
        return lines + para("Whatever is chosen, some of the work gets in the way of other work.")
    alone = [some[0] for some in found.short if len(some) == 1]
    if alone:
        lines += para("One of these would have to give way:" if len(alone) > 1 else "One limit keeps them all out:")
        return lines + bullets(_one(base, case, short) for short in alone)
    lines += para("None of them alone is to blame. These would have to give way together:")
    return lines + bullets("; and ".join(_one(base, case, short) for short in some) for some in found.short)


def _one(base: RuleBase, case: Case, short: Short) -> str:
    limits, needed = case.limits, short.needed
    words = LIMIT_WORDS[short.limit]
    match short.limit:
        case "minutes":
            assert limits.minutes is not None and isinstance(needed, int)
            return f"{words}: {limits.minutes} minutes, and it takes {needed}, {needed - limits.minutes} more"
        case "money":
            assert limits.money is not None and isinstance(needed, Fraction)
            return f"{words}: {money(limits.money)}, and it takes {money(needed)}, {money(needed - limits.money)} more"
        case "hardest" | "weakest" | "visible":
            given = getattr(limits, short.limit)
            return f"{words}: {given} of 5, and it takes {needed} ({_culprits(base, case, short)})"
    return f"{words} ({_culprits(base, case, short)})"


def _culprits(base: RuleBase, case: Case, short: Short) -> str:
    return "; ".join(fix_title(base, case, fix) for fix in short.past) or "the work as a whole"


def plans_data(base: RuleBase, case: Case, found: Comparison) -> dict[str, Any]:
    """The comparison as plain data. Each plan is told as `plan --json` tells one."""
    return {
        "version": VERSION,
        "title": case.title,
        "garment": case.garment,
        "tape": case.tape,
        "plans": [
            {
                "names": list(offer.names),
                "as_it_stands": offer.stands,
                "money": str(offer.money),
                "unpriced": list(offer.unpriced),
                "plan": plan_data(base, case, offer.plan),
            }
            for offer in found.offers
        ],
        "differences": [
            {"finding": row.finding, "title": row.title, "fixes": list(row.fixes)} for row in found.differences
        ],
        "held": list(found.held),
        "do_not_go_together": [[{"finding": f, "fix": fix} for f, fix in some] for some in found.apart],
        "limits_too_tight": [
            [{"limit": short.limit, "needed": _plain(short.needed), "fixes": list(short.past)} for short in some]
            for some in found.short
        ],
        "searched": {"advice_worked_out": found.runs, "searches": found.rounds},
    }


def _plain(value: object) -> object:
    return str(value) if isinstance(value, Fraction) else value


def plan_called(found: Comparison, word: str) -> Offer:
    """The plan meant by its number or by what it is for. UsageError names those there are."""
    if not found.offers:
        raise UsageError("no plan keeps the limits", hint="`advisor plans` with the same limits says which one bites")
    wanted = " ".join(word.replace("-", " ").replace("_", " ").casefold().split())
    numbered = {str(number): offer for number, offer in enumerate(found.offers, 1)}
    if wanted in numbered:
        return numbered[wanted]
    for offer in found.offers:
        if wanted in offer.names:
            return offer
    # Where all plans are alike in it, the name is not shown; the quickest is then as good as any.
    if wanted in NAMES:
        return min(
            found.offers, key=lambda offer: (value_for(wanted, offer.plan.totals), offer.plan.totals.minutes.likely)
        )
    begun = [offer for offer in found.offers if any(name.startswith(wanted) for name in offer.names)]
    if len(begun) == 1 and wanted:
        return begun[0]
    known: Iterable[str] = (name for offer in found.offers for name in offer.names)
    raise UsageError(f"no plan is called '{word}'", hint=nearest(wanted, [*known, *numbered]))
