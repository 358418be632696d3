"""The same advice, plan and reasons as plain data for `--json`. Version 1; lengths carry mm, unit and text."""

from collections.abc import Iterable
from fractions import Fraction
from typing import Any

from advisor.advise.flips import Flip, OnlyIf
from advisor.advise.overrule import overruled
from advisor.core.advice import Advice, Plan
from advisor.core.case import Answer, Case, Known
from advisor.core.figure import Figure
from advisor.core.trace import Node
from advisor.core.work import Finding, Option, Spread
from advisor.lengths import TAPES, as_json
from advisor.report.advice import condition, past_limits, teller_of
from advisor.report.cautions import cautions_data
from advisor.report.labels import finding_label, option_label
from advisor.report.plan import instruction
from advisor.report.reckoning import number_data
from advisor.rulebase.base import RuleBase
from advisor.words import Teller

VERSION = 1
Data = dict[str, Any]


def advice_data(
    base: RuleBase, case: Case, advice: Advice, suggested: Iterable[str], hanging: Iterable[OnlyIf]
) -> Data:
    """Findings, options in order of rank, what hangs on the unknown, and the trace."""
    guesses = set(suggested)
    return {
        **_head(base, case),
        "findings": [_finding(base, case, advice, finding, finding.id in guesses) for finding in advice.findings],
        "only_if": [_only_if(base, case, item) for item in hanging],
        "idle_choices": list(advice.idle),
        "trace": [_node(node) for _, node in sorted(advice.trace.nodes.items())],
    }


def plan_data(base: RuleBase, case: Case, plan: Plan) -> Data:
    """Choices, totals, materials, steps in order, what remains."""
    teller, totals = teller_of(base, case), plan.totals
    overrules = {option.finding: [ruling.words for ruling in option.rulings] for option in overruled(plan.advice)}
    return {
        **_head(base, case),
        "choices": {
            f: {
                "fix": c.fix,
                "reason": c.reason,
                "at": c.at,
                "suggested": f in plan.suggested,
                "against": overrules.get(f, []),
            }
            for f, c in sorted(plan.advice.choices.items())
        },
        "totals": {
            "difficulty": totals.difficulty,
            "durability": totals.durability,
            "visibility": totals.visibility,
            "minutes": _spread(totals.minutes),
            "irreversible_steps": totals.irreversible,
        },
        "cautions": cautions_data(base, plan),
        "materials": [{"what": need.what, "amount": need.amount} for need in plan.materials],
        "steps": [
            {
                "number": number,
                "id": step.op.id,
                "stage": step.op.stage,
                "says": instruction(teller, step),
                "minutes": _spread(step.op.minutes),
                "reversible": step.op.reversible,
                "check_before": step.op.check_before,
                "try_on": step.op.try_on,
                "serves": list(step.serves),
                "figures": {name: figure_data(teller, figure) for name, figure in sorted(step.op.figures.items())},
            }
            for number, step in enumerate(plan.steps, 1)
        ],
        "remains": [{"id": finding.id, "words": finding.words} for finding in plan.remains],
        "blocked": list(plan.blocked),
    }


def why_data(base: RuleBase, case: Case, advice: Advice, item: Finding | Option, flips: Iterable[Flip]) -> Data:
    """The trace below a finding or an option, and what would flip a refusal."""
    roots = [r.node for r in item.rulings] if isinstance(item, Option) and item.rulings else [item.node]
    nodes = {node.id: node for root in roots for _, node in advice.trace.walk(root, 1000)}
    return {
        **_head(base, case),
        "about": item.id,
        "roots": roots,
        "nodes": [_node(node) for _, node in sorted(nodes.items())],
        "flips": [{"key": flip.key, "at": _value(case, flip.value), "upward": flip.upward} for flip in flips],
    }


def figure_data(teller: Teller, figure: Figure) -> Data:
    """One figure with its formula told and its source."""
    return {
        "value": number_data(figure.value, figure.unit, teller.tape),
        "unit": figure.unit,
        "formula": teller.formula(figure),
        "source": figure.source,
    }


def _head(base: RuleBase, case: Case) -> Data:
    return {"version": VERSION, "title": case.title, "garment": case.garment, "tape": case.tape}


def _finding(base: RuleBase, case: Case, advice: Advice, finding: Finding, guessed: bool) -> Data:
    teller = teller_of(base, case)
    choice = advice.choices.get(finding.id)
    return {
        "label": finding_label(advice, finding),
        "id": finding.id,
        "title": finding.title,
        "stage": finding.stage,
        "words": finding.words,
        "amount": _value(case, finding.amount) if finding.amount is not None else None,
        "source": finding.source,
        "chosen": choice.fix if choice else None,
        "suggested": guessed,
        "options": [_option(case, teller, advice, option) for option in advice.options_for(finding.id)],
    }


def _option(case: Case, teller: Teller, advice: Advice, option: Option) -> Data:
    return {
        "label": option_label(advice, option),
        "fix": option.fix,
        "title": option.title,
        "reason": option.reason,
        "why": option.why,
        "wrong_when": option.wrong_when,
        "difficulty": option.grades.difficulty,
        "durability": option.grades.durability,
        "visibility": option.grades.visibility,
        "graded": list(option.grades.because),
        "minutes": _spread(option.minutes),
        "closes": option.closes,
        "leaves": _value(case, option.work.leaves) if option.work.leaves else None,
        "cautions": list(option.cautions),
        "ruled_out": [ruling.words for ruling in option.rulings],
        "past_limits": past_limits(option, case.limits),
        "dominated_by": option.dominated_by or None,
        "figures": {name: figure_data(teller, figure) for name, figure in sorted(option.work.figures.items())},
        "source": option.source,
    }


def _only_if(base: RuleBase, case: Case, item: OnlyIf) -> Data:
    question = base.asked(case)[item.key]
    return {
        "option": item.option,
        "title": item.title,
        "finding": item.finding,
        "key": item.key,
        "condition": condition(teller_of(base, case), question, item),
        "words": list(item.words),
        "runs": [[_value(case, least), _value(case, most)] for least, most in item.runs],
    }


def _node(node: Node) -> Data:
    return {"id": node.id, "kind": node.kind, "words": node.words, "parents": list(node.parents), "source": node.source}


def _value(case: Case, value: object) -> Any:
    return as_json(value, TAPES[case.tape]) if isinstance(value, Fraction) else value


def answer_data(case: Case, answer: Answer | None) -> Any:
    """The value of an answer; None for one that was not given or that she cannot give."""
    return _value(case, answer.value) if isinstance(answer, Known) else None


def _spread(spread: Spread) -> Data:
    return {"least": spread.least, "likely": spread.likely, "most": spread.most}
