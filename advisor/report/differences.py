"""What differs between two plans, in words and as data: for what-if and for replay."""

from collections.abc import Callable, Iterable, Mapping
from dataclasses import asdict
from typing import Any

from advisor.advise.differences import Difference, Moved
from advisor.core.advice import Advice
from advisor.core.case import Case, FindingId, FixId, Sums
from advisor.core.model import place_of
from advisor.core.work import Spread
from advisor.report.advice import fix_title, likely, minutes, problem_words
from advisor.rulebase.base import RuleBase

Sentences = list[str]
MOVED = {
    "out": "ruled out now",
    "back": "no longer ruled out",
    "comes": "offered now",
    "goes": "no longer offered",
}
GRADES = (
    ("hardest", "Hardest part: {now} of 5, and it was {then}."),
    ("weakest", "Weakest part lasts: {now} of 5, and it was {then}."),
    ("shows", "Shows most: {now} of 5, and it was {then}."),
    ("final", "Steps that cannot be undone: {now}, and there were {then}."),
)


class Namer:
    """Names findings, fixes and steps of either plan, whichever of the two knows them."""

    def __init__(self, base: RuleBase, case: Case, *advices: Advice) -> None:
        self.base, self.case, self.advices = base, case, advices

    def finding(self, id: FindingId) -> str:
        """A finding in a few words, with its place where several are called the same."""
        found = [finding for advice in self.advices if (finding := advice.finding(id))]
        return f"{found[0].title} ({self.place(found[0].place)})" if found else problem_words(self.base, self.case, id)

    def place(self, place: str) -> str:
        """What a place is called."""
        places = self.base.garment(self.case.garment).places
        return places[place].words if place in places else place.replace("_", " ")

    def fix(self, fix: FixId) -> str:
        """What a fix is called."""
        return fix_title(self.base, self.case, fix)

    def step(self, op: str) -> str:
        """An operation nobody can tell any more, by what its name says: what is done, and where."""
        verb, _, key = op.rpartition(" ")
        return f"{verb} ({self.place(place_of(key))})"


def findings_told(difference: Difference, namer: Namer, words: Callable[[FindingId], str]) -> Sentences:
    """The findings that come, go or stand otherwise. `words` tells one that comes."""
    told = [f"Found: {words(id)}" for id in difference.found]
    told += [f"No longer found: {namer.finding(id)}." for id in difference.closed]
    for id, moved in difference.moved.items():
        told += [f"{namer.finding(id)}: {part}." for part in _moved_told(moved, namer)]
    return told


def _moved_told(moved: Moved, namer: Namer) -> Sentences:
    then, now = moved.took
    told = []
    if then != now and now:
        told.append(namer.fix(now) + (f", in place of: {namer.fix(then)}" if then else ""))
    elif then != now:
        told.append(f"nothing in place of: {namer.fix(then)}")
    for name, words in MOVED.items():
        fixes: Iterable[FixId] = getattr(moved, name)
        if titles := "; ".join(namer.fix(fix) for fix in fixes):
            told.append(f"{words}: {titles}")
    if moved.reranked and then == now:
        told.append("the others come in another order of rank")
    return told


def sums_told(then: Sums, now: Sums) -> Sentences:
    """The figures of two plans where they differ."""
    told = []
    if _minutes(then) != _minutes(now):
        told.append(f"Time: {_spread(now)}, and it was {_spread(then)}.")
    for name, words in GRADES:
        one, two = getattr(then, name), getattr(now, name)
        if one != two:
            told.append(words.format(then=one, now=two))
    return told


def _minutes(sums: Sums) -> Spread:
    return Spread(sums.least, sums.likely, sums.most)


def _spread(sums: Sums) -> str:
    spread = _minutes(sums)
    if not spread.most:
        return "none"
    return f"{minutes(spread.least, spread.most)}, likely {likely(spread)}"


def difference_data(difference: Difference) -> dict[str, Any]:
    """The same for programs, by ids."""
    now = difference.now.findings
    return {
        "found": [{"id": id, **asdict(now[id])} for id in difference.found],
        "closed": list(difference.closed),
        "moved": {id: asdict(moved) for id, moved in difference.moved.items()},
        "steps": {
            "added": list(difference.added),
            "dropped": list(difference.dropped),
            "changed": list(difference.changed),
            "reordered": difference.reordered,
        },
        "totals": _totals(difference.then.totals, difference.now.totals),
    }


def _totals(then: Sums, now: Sums) -> Mapping[str, Any]:
    one, two = asdict(then), asdict(now)
    return {name: {"then": one[name], "now": two[name]} for name in one if one[name] != two[name]}
