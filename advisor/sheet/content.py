"""What stands on the sheet before the templates: the plan in blocks, to be laid out by whoever prints it."""

from collections.abc import Iterator
from dataclasses import dataclass

from advisor.core.advice import Plan
from advisor.core.case import Case, Known
from advisor.core.stages import STAGE_WORDS
from advisor.report.advice import likely, minutes, teller_of
from advisor.report.answers import told_answer
from advisor.report.cautions import warned
from advisor.report.overrule import chosen_lines
from advisor.report.plan import instruction, overruled_at
from advisor.rulebase.base import RuleBase
from advisor.words import capital


@dataclass(frozen=True)
class Title:
    """The name of the case; `under` says what garment it is."""

    text: str
    under: str


@dataclass(frozen=True)
class Heading:
    """A heading."""

    text: str


@dataclass(frozen=True)
class Text:
    """A paragraph; `inner` is set in a little under it."""

    text: str
    inner: str = ""


@dataclass(frozen=True)
class Tick:
    """Something to tick off; `number` is empty where it is no step. `first` must be sure before it is done."""

    text: str
    number: str = ""
    first: str = ""
    took: str = ""


Block = Title | Heading | Text | Tick


def blocks(base: RuleBase, case: Case, plan: Plan) -> Iterator[Block]:
    """The whole sheet but its templates."""
    yield Title(case.title, base.garment(case.garment).title)
    yield from _decided(plan)
    yield from _sure_of(base, case)
    if plan.steps:
        yield from _totals(base, plan)
        yield from _minded(base, plan)
        yield from _at_hand(plan)
        yield from _steps(base, case, plan)
    yield from _left(plan)


def _decided(plan: Plan) -> Iterator[Block]:
    yield Heading("What is done about what")
    chosen = {option.finding: option for option in plan.advice.chosen()}
    for finding in plan.advice.findings:
        option = chosen.get(finding.id)
        mark = " (suggested)" if finding.id in plan.suggested else ""
        held = plan.advice.choices.get(finding.id)
        why = chosen_lines(plan.advice, option, held) if option and held and not mark else []
        told = " ".join([f"{option.title}{mark}", *why]) if option else "Nothing is done about it here."
        yield Text(finding.words, told)
    if not plan.advice.findings:
        yield Text("Nothing is wrong, as far as it has been told.")


def _sure_of(base: RuleBase, case: Case) -> Iterator[Block]:
    """The measures all numbers rest on, so that they can be taken again at the table."""
    teller, questions = teller_of(base, case), base.garment(case.garment).questions
    measured = [
        f"{capital(question.name)}: {told_answer(question, teller, answer)}"
        for key, question in questions.items()
        if isinstance(answer := case.answers.get(key), Known) and not isinstance(answer.value, str)
    ]
    if measured:
        yield Heading("Measures it rests on")
        yield Text("; ".join(measured) + ".")


def _totals(base: RuleBase, plan: Plan) -> Iterator[Block]:
    totals, grades = plan.totals, base.grades
    yield Heading("What it comes to")
    time = f"{minutes(totals.minutes.least, totals.minutes.most)}, likely {likely(totals.minutes)}."
    yield Text(f"Time: {time}")
    yield Text(f"Hardest part: {totals.difficulty} of 5, {grades.meaning('difficulty', totals.difficulty)}.")
    yield Text(f"Weakest part lasts: {totals.durability} of 5, {grades.meaning('durability', totals.durability)}.")


def _minded(base: RuleBase, plan: Plan) -> Iterator[Block]:
    """Every caution: paper has room, and cannot be asked for more."""
    found = warned(base, plan.advice.chosen())
    if found:
        yield Heading("Mind")
    for each in found:
        yield Text(each.says, " ".join(each.unsaid))


def _at_hand(plan: Plan) -> Iterator[Block]:
    if plan.materials:
        yield Heading("Have at hand")
        for need in plan.materials:
            yield Tick(need.what + (f": {need.amount}" if need.amount else ""))


def _steps(base: RuleBase, case: Case, plan: Plan) -> Iterator[Block]:
    teller, stage, against = teller_of(base, case), "", overruled_at(plan)
    for number, step in enumerate(plan.steps, 1):
        if step.op.stage != stage:
            stage = step.op.stage
            yield Heading(capital(STAGE_WORDS[step.op.stage]))
        first = "" if step.op.reversible else f"Cannot be undone. Before it, make sure that {step.op.check_before}."
        first = " ".join([*against.get(step.op.id, ()), first]).strip()
        yield Tick(instruction(teller, step), str(number), first, f"{step.op.minutes.likely} min; took")


def _left(plan: Plan) -> Iterator[Block]:
    if plan.remains:
        yield Heading("What is left")
        for finding in plan.remains:
            yield Text(finding.words)
