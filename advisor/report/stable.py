"""How firmly the plan stands, in words and as data: the most fragile first."""

from dataclasses import asdict
from typing import Any

from advisor.advise.stable import REACH, Amount, Stability, Upset, Word, taken
from advisor.core.advice import Advice
from advisor.core.case import Case, FindingId, Stood
from advisor.core.model import Mm
from advisor.core.question import Question
from advisor.lengths import TAPES, as_json
from advisor.report.advice import head_lines, teller_of
from advisor.report.differences import Namer
from advisor.report.lines import bullets, heading, para
from advisor.rulebase.base import RuleBase
from advisor.words import Teller, capital

AMOUNTS, WORDS = 5, 3
"""How many of each are told at once: eight lines are read, thirty are not."""


def stable_lines(base: RuleBase, case: Case, advice: Advice, found: Stability, everything: bool) -> list[str]:
    """What would upset the plan: amounts by how far off they may be, then answers; the rest by number."""
    told = _Told(base, case, advice, found)
    lines = head_lines(base, case)
    if not found.amounts and not found.words:
        return [*lines, "", *para("No single answer, were it otherwise, would make it another plan.")]
    amounts = found.amounts if everything else found.amounts[:AMOUNTS]
    words = found.words if everything else found.words[: WORDS + AMOUNTS - len(amounts)]
    if amounts:
        lines += [*heading("Measure these again, beginning with the first"), *bullets(map(told.amount, amounts))]
    if words:
        lines += [*heading("Be sure of these answers"), *bullets(map(told.word, words))]
    lines += ["", *para(told.firm())]
    more = len(found.amounts) + len(found.words) - len(amounts) - len(words)
    if more:
        lines += para(f"It hangs on {more} more, less closely; --all tells {'them' if more > 1 else 'it'}.")
    return lines


class _Told:
    def __init__(self, base: RuleBase, case: Case, advice: Advice, found: Stability) -> None:
        self.questions, self.found = base.asked(case), found
        self.teller: Teller = teller_of(base, case)
        self.namer = Namer(base, case, advice)

    def amount(self, amount: Amount) -> str:
        """One amount: how far off, on the side that is nearer, makes another plan, and which."""
        upset, question = amount.nearest, self.questions[amount.key]
        assert upset is not None
        side = "" if not upset.at else " or less" if upset.at < amount.mm else " or more"
        what = f"{capital(question.name)} ({self.teller.value(amount.mm)})"
        where = f"at {self.teller.value(upset.at)}{side}, {self.teller.value(upset.by)} off"
        return f"{what}: {where}: {self.change(upset.then)}."

    def word(self, word: Word) -> str:
        """One answer: with which others there is another plan; which one, where it is always the same."""
        question = self.questions[word.key]
        head = f"{capital(question.name)} ({question.words[word.word]})"
        changes = dict.fromkeys(self.change(then) for _, then in word.upsets)
        if len(word.upsets) == word.others and word.others > 1:
            which = "any other answer"
        else:
            which = " or ".join(f"'{question.words[other]}'" for other, _ in word.upsets)
        return f"{head}: {which}: {next(iter(changes)) if len(changes) == 1 else 'another plan'}."

    def change(self, then: dict[FindingId, Stood]) -> str:
        """The first thing that is otherwise, and how many more."""
        told = self._changes(then)
        more = len(told) - 1
        return told[0] + (f", and {more} thing{'s' * (more > 1)} more" if more else "")

    def _changes(self, then: dict[FindingId, Stood]) -> list[str]:
        now = self.found.now
        gone = [f"no longer found: {self.namer.finding(id)}" for id in now if id not in then]
        found = [f"found besides: {self.namer.finding(id)}" for id in then if id not in now]
        moved = []
        for id in (id for id in now if id in then and taken({id: now[id]}) != taken({id: then[id]})):
            one, two = now[id].took, then[id].took
            fix = self.namer.fix(two) if two else "nothing that helps"
            moved.append(f"{fix}, in place of: {self.namer.fix(one)}" if one != two else f"ruled out: {fix}")
        return [*moved, *gone, *found]

    def firm(self) -> str:
        """What can be off and leaves the plan as it is."""
        reach = self.teller.value(REACH * self.teller.tape.mark)
        count = len(self.found.firm)
        if not count:
            return f"Amounts are looked at up to {reach} either way."
        answers = "1 answer leaves" if count == 1 else f"{count} answers leave"
        return f"{answers} the plan as it is, whatever they were: amounts up to {reach} either way."


def stable_data(base: RuleBase, case: Case, found: Stability) -> dict[str, Any]:
    """The same for programs, whole."""
    questions = base.asked(case)

    def length(mm: Mm) -> Any:
        return as_json(mm, TAPES[case.tape])

    def upset(each: Upset | None) -> Any:
        return each and {"at": length(each.at), "by": length(each.by), "then": _stood(each.then)}

    return {
        "version": 1,
        "title": case.title,
        "reach": length(REACH * TAPES[case.tape].mark),
        "amounts": [
            {**_about(questions[a.key]), "now": length(a.mm), "below": upset(a.below), "above": upset(a.above)}
            for a in found.amounts
        ],
        "answers": [
            {**_about(questions[w.key]), "now": w.word, "upsets": {word: _stood(then) for word, then in w.upsets}}
            for w in found.words
        ],
        "firm": list(found.firm),
    }


def _about(question: Question) -> dict[str, str]:
    return {"key": question.key, "name": question.name}


def _stood(then: dict[FindingId, Stood]) -> dict[str, Any]:
    return {id: asdict(each) for id, each in then.items()}
