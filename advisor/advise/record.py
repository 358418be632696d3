"""The plan on record: what it was, and digests of all that it rested on."""

import json
from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass

from advisor import __version__
from advisor.core.advice import Advice, Plan
from advisor.core.case import Case, FindingId, Known, Record, Stood, Sums
from advisor.knowledge.cards import Answer, Find
from advisor.rulebase.base import RuleBase
from advisor.rulebase.digests import FORMULAS, SHORT, WORK, base_digest, card_digests, code_digest, digest_of


@dataclass(frozen=True)
class PlanOutline:
    """A plan as it is compared with another."""

    findings: Mapping[FindingId, Stood]
    steps: Mapping[str, tuple[tuple[str, str], ...]]
    totals: Sums


def outline(plan: Plan) -> PlanOutline:
    """What `plan` is compared by."""
    return PlanOutline(stood(plan.advice), step_marks(plan), sums(plan))


def record_of(base: RuleBase, case: Case, plan: Plan, at: str) -> Record:
    """The record of `plan`, which was made of `case`. at: date and time, ISO."""
    findings, steps, totals = stood(plan.advice), step_marks(plan), sums(plan)
    rest = (totals, sorted(findings.items()), list(steps.items()), sorted(f.id for f in plan.remains), minded(plan))
    cards = card_digests(base, used(base, case, plan.advice))
    return Record(
        at=at,
        advisor=__version__,
        rules=base_digest(base),
        others=base_digest(base, but=cards),
        formulas=code_digest(FORMULAS),
        operations=code_digest(WORK),
        answers=answers_digest(case),
        advice=digest_of([repr(rest)]),
        totals=totals,
        findings=findings,
        steps=steps,
        cards=cards,
    )


def stood(advice: Advice) -> dict[FindingId, Stood]:
    """How each finding stands, in order of work."""
    found: dict[FindingId, Stood] = {}
    for finding in advice.findings:
        options = advice.options_for(finding.id)
        choice = advice.choices.get(finding.id)
        took = choice.fix if choice and choice.fix in {option.fix for option in options} else ""
        found[finding.id] = Stood(
            took, tuple(o.fix for o in options if o.open), tuple(o.fix for o in options if not o.open)
        )
    return found


def step_marks(plan: Plan) -> dict[str, tuple[tuple[str, str], ...]]:
    """The steps in order of work, by stage: each operation, and the digest of all that is said of it."""
    steps: dict[str, tuple[tuple[str, str], ...]] = {}
    for step in plan.steps:
        op = step.op
        # Exact values and not those on her tape: a change too small for it is still one.
        said = (op.says, op.check_before, op.try_on, op.reversible, str(op.minutes), _numbers(step.op.figures.items()))
        mark = digest_of([repr(said)], SHORT)
        steps[op.stage] = (*steps.get(op.stage, ()), (op.id, mark))
    return steps


def _numbers(figures: Iterable[tuple[str, object]]) -> list[tuple[str, str]]:
    return [(name, str(getattr(figure, "value", ""))) for name, figure in sorted(figures)]


def sums(plan: Plan) -> Sums:
    """The figures of a plan."""
    totals, minutes = plan.totals, plan.totals.minutes
    grades = (totals.difficulty, totals.durability, totals.visibility)
    return Sums(*grades, minutes.least, minutes.likely, minutes.most, totals.irreversible)


def minded(plan: Plan) -> tuple[str, ...]:
    """Every caution of the fixes taken, once, sorted."""
    return tuple(sorted({caution for option in plan.advice.chosen() for caution in option.cautions}))


def used(base: RuleBase, case: Case, advice: Advice) -> Iterator[str]:
    """The files of the rule base that have a say in this advice, by id.

    The cards that find what is found, that offer what is offered, that rule out what is ruled out, the fixes
    offered; and the garment with its roles and the grades. What changes advice is one of these, before or after.
    """
    problems = {finding.id: finding.problem for finding in advice.findings}
    offered = {(problems[option.finding], option.fix) for option in advice.options}
    for id, card in base.rules.items():
        if isinstance(card, Find) and card.problem in problems.values():
            yield id
        if isinstance(card, Answer) and (card.problem, card.fix) in offered:
            yield id
    yield from (ruling.rule for option in advice.options for ruling in option.rulings if ruling.rule)
    yield from (option.fix for option in advice.options)
    yield from (f"roles.{place.role}" for place in base.garment(case.garment).places.values())
    yield from (f"garments.{case.garment}", "tables.grades")


def answers_digest(case: Case) -> str:
    """The digest of everything in a case that advice is made of."""
    answers = [(key, str(answer.value) if isinstance(answer, Known) else "") for key, answer in case.answers.items()]
    choices = [(finding, choice.fix) for finding, choice in case.choices.items()]
    return digest_of([json.dumps([case.garment, case.tape, str(case.limits), sorted(answers), sorted(choices)])])
