"""Why a question is asked, and how many more there are: in words of cloth and body, in a few lines."""

from collections.abc import Iterable, Iterator

from advisor.core.advice import Advice
from advisor.core.case import Case
from advisor.interview.agenda import Due
from advisor.interview.stand import sized_by, stand_of, turns
from advisor.report.lines import para
from advisor.rulebase.base import RuleBase

NUMBERS = ("no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
ROOM = 140
"""About so many letters of names fit into two lines."""


def count_line(deciding: int, put_off: int = 0) -> str:
    """How many questions could each change the advice, this one among them, as counted just now.

    A look counts as one. Those put off were not looked at, and the sentence says so.
    """
    but = f", apart from the {put_off} put off" if put_off else ""
    if deciding == 0:
        return f"No answer could change the advice any more{but}."
    if deciding == 1:
        return f"This is the only question that could change the advice{but}."
    more = NUMBERS[deciding - 1] if deciding <= len(NUMBERS) else str(deciding - 1)
    return f"After this one {more} more question{'s' * (deciding > 2)} could change the advice{but}."


def why_asked(base: RuleBase, case: Case, due: Due) -> tuple[str, ...]:
    """What hangs on the answer, in at most three sentences: what it may show, which fixes it brings or bars."""
    stand = stand_of(base, case)
    items = due.over.items if due.over else (due.question,)
    now_wrong, now_open = _wrong(stand.advice), _open(stand.advice)
    wrong: dict[str, None] = {}
    brought: dict[str, None] = {}
    barred: dict[str, None] = {}
    for then in _thens(base, case, due):
        wrong.update(dict.fromkeys(_new(_wrong(then), now_wrong)))
        brought.update(dict.fromkeys(_new(_open(then), now_open)))
        barred.update(dict.fromkeys(_new(now_open, _open(then))))
    told = [
        _named("It may show that something is wrong: ", wrong),
        _named("Ways that may come in: ", brought),
        _named("Ways that may fall away: ", barred),
    ]
    if any(told):
        return tuple(text for text in told if text)
    sized = dict.fromkeys(title for question in items for title in sized_by(base, case, question))
    return (_named("It changes no way of doing it, only the numbers of: ", sized) or NOTHING,)


def why_lines(base: RuleBase, case: Case, due: Due) -> list[str]:
    """The same as lines, six at the most at the usual width."""
    return [line for text in why_asked(base, case, due) for line in para(text)]


NOTHING = "Nothing hangs on it now; it is here to be looked at or changed."


def _thens(base: RuleBase, case: Case, due: Due) -> Iterator[Advice]:
    for question in due.over.items if due.over else (due.question,):
        for _, (followed, _) in turns(base, case, question):
            yield followed.advice


def _wrong(advice: Advice) -> list[str]:
    return [_small(finding.title) for finding in advice.findings]


def _open(advice: Advice) -> list[str]:
    return [_small(option.title) for option in advice.options if option.open]


def _new(then: Iterable[str], now: Iterable[str]) -> list[str]:
    known = set(now)
    return [title for title in then if title not in known]


def _small(title: str) -> str:
    return title[:1].lower() + title[1:]


def _named(opening: str, titles: Iterable[str]) -> str:
    """As many names as there is room for, and how many more there are."""
    names = list(titles)
    if not names:
        return ""
    shown: list[str] = []
    room = ROOM - len(opening)
    for name in names:
        room -= len(name) + 2
        if shown and room < 0:
            break
        shown.append(name)
    rest = len(names) - len(shown)
    return f"{opening}{'; '.join(shown)}{f'; and {rest} more' if rest else ''}."
