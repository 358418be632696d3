"""What another answer or choice would change, and nothing else: in words and as data."""

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, replace
from functools import cached_property
from typing import Any

from advisor.advise.differences import Difference
from advisor.advise.record import minded, outline
from advisor.advise.world import meant
from advisor.core.advice import Plan, Step
from advisor.core.case import Answer, Case, Known
from advisor.core.model import Key
from advisor.core.question import Question
from advisor.report.advice import head_lines, teller_of
from advisor.report.answers import told_answer
from advisor.report.data import answer_data
from advisor.report.differences import Namer, difference_data, findings_told, sums_told
from advisor.report.lines import bullets, heading, para
from advisor.report.plan import instruction
from advisor.rulebase.base import RuleBase
from advisor.words import Teller, capital, names_in

NOTHING = "Nothing changes."
_SENTENCE = re.compile(r"(?<=[.!?])\s+(?=[A-Z{])")


@dataclass(frozen=True)
class Change:
    """One plan, `then`, of the case as it is, and the one that stands in its place, `now`."""

    base: RuleBase
    case: Case
    then: Plan
    now: Plan

    @cached_property
    def difference(self) -> Difference:
        """The two held against each other."""
        return Difference(outline(self.then), outline(self.now))

    @cached_property
    def teller(self) -> Teller:
        """How values are said in this case."""
        return teller_of(self.base, self.case)

    @cached_property
    def parts(self) -> Mapping[str, list[str]]:
        """What is told, one sentence each, under its heading; a part with nothing to tell is left out."""
        told = {
            "What is wrong, and what is done about it": self._findings(),
            "The numbers": self._numbers(),
            "Steps that come": self._steps(self.now, self.difference.added),
            "Steps that go": self._steps(self.then, self.difference.dropped),
            "What it comes to": sums_told(self.difference.then.totals, self.difference.now.totals),
            "To mind": self._cautions(),
        }
        return {title: lines for title, lines in told.items() if lines}

    def _findings(self) -> list[str]:
        then, now = self.then.advice, self.now.advice
        words = {finding.id: finding.words for finding in now.findings}
        told = findings_told(self.difference, Namer(self.base, self.case, now, then), words.__getitem__)
        was = {finding.id: finding.words for finding in then.findings}
        told += [f"Now: {said}" for id, said in words.items() if id in was and was[id] != said]
        left, leaves = ({finding.id: finding.words for finding in plan.remains} for plan in (self.then, self.now))
        told += [f"Left open: {said}" for id, said in leaves.items() if id not in left]
        return told + [f"No longer left open: {said}" for id, said in left.items() if id not in leaves and id in words]

    def _numbers(self) -> list[str]:
        then = {step.op.id: step for step in self.then.steps}
        told = []
        for number, step in enumerate(self.now.steps, 1):
            if step.op.id in self.difference.changed:
                said = " ".join(changed_sentences(self.teller, then[step.op.id], step))
                told += [f"Step {number}: {said}"] if said else []
        return told

    def _steps(self, plan: Plan, ids: Iterable[str]) -> list[str]:
        wanted = set(ids)
        return [
            f"{number}. {_sentences(instruction(self.teller, step))[0]}"
            for number, step in enumerate(plan.steps, 1)
            if step.op.id in wanted
        ]

    def _cautions(self) -> list[str]:
        then, now = minded(self.then), minded(self.now)
        told = [caution for caution in now if caution not in then]
        return told + [f"No longer: {caution}" for caution in then if caution not in now]


def change_lines(change: Change) -> list[str]:
    """The differences under their headings, or that there are none."""
    lines = [line for title, told in change.parts.items() for line in [*heading(title), *bullets(told)]]
    return lines or ["", NOTHING]


def whatif_lines(change: Change, supposed: Mapping[Key, Answer]) -> list[str]:
    """What is supposed in place of what, then what that changes."""
    base, case = change.base, change.case
    garment, asked, lines = base.garment(case.garment), base.asked(case), [*head_lines(base, case), ""]
    given = {key: answer.value for key, answer in {**case.answers, **supposed}.items() if isinstance(answer, Known)}
    for key, answer in supposed.items():
        question, held = asked[key], case.answers.get(key)
        was = _plainly(question, change.teller, held) if held else "not asked yet"
        lines += para(f"Supposed: {question.name}: {_plainly(question, change.teller, answer)} (now: {was}).")
        if not meant(garment, key, given):
            gates = [asked[gate].name for gate, words in question.after if given.get(gate) not in words]
            lines += para(f"As it is answered, {' and '.join(gates)} makes that mean nothing.", 2)
    return lines + change_lines(change)


def _plainly(question: Question, teller: Teller, answer: Answer) -> str:
    """The value alone: how it is known makes no difference here."""
    return told_answer(question, teller, replace(answer, how="told", told="") if isinstance(answer, Known) else answer)


def changed_sentences(teller: Teller, then: Step, now: Step) -> list[str]:
    """The sentences of a step that are not what they were; a number of another value says what it was."""
    before, told = _sentences(then.op.says), []
    for sentence in _sentences(now.op.says):
        if sentence not in before:
            told.append(teller.say(sentence, now.op.figures))
            continue
        values = {name: _both(teller, then, now, name) for name in names_in(sentence)}
        if any(was != is_now for was, is_now in values.values()):
            filled = {name: two if one == two else f"{two} (was {one})" for name, (one, two) in values.items()}
            told.append(capital(sentence.format(**filled)))
    return told


def _both(teller: Teller, then: Step, now: Step, name: str) -> tuple[str, str]:
    one, two = (teller.say(f"{{{name}}}", step.op.figures) for step in (then, now))
    return one, two


def _sentences(text: str) -> list[str]:
    return _SENTENCE.split(text)


def whatif_data(change: Change, supposed: Mapping[Key, Answer]) -> dict[str, Any]:
    """The same for programs."""
    case = change.case
    return {
        "version": 1,
        "title": case.title,
        "supposed": {
            key: {"now": answer_data(case, case.answers.get(key)), "supposed": answer_data(case, answer)}
            for key, answer in supposed.items()
        },
        **change_data(change),
    }


def change_data(change: Change) -> dict[str, Any]:
    """The differences by ids, and what is told of them under each heading."""
    return {
        "nothing": not change.parts,
        "differs": difference_data(change.difference),
        "told": {title: list(lines) for title, lines in change.parts.items()},
    }
