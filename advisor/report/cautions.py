"""The cautions of a plan: what stems from one cause told once, the dangers first, three at a time."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from advisor.core.advice import Plan
from advisor.core.work import OpId, Option
from advisor.report.lines import bullets, heading, para
from advisor.rulebase.base import RuleBase
from advisor.rulebase.cautions import cause_of

AT_ONCE = 3


@dataclass(frozen=True)
class Warned:
    """What is warned of: the sentence that tells it, the cautions it stands for, each once, and whose they are."""

    cause: str
    says: str
    danger: bool
    texts: tuple[str, ...]
    options: tuple[Option, ...]

    @property
    def unsaid(self) -> tuple[str, ...]:
        """The cautions that the sentence stands for without being them."""
        return tuple(text for text in self.texts if text != self.says)


def warned(base: RuleBase, options: Iterable[Option]) -> tuple[Warned, ...]:
    """The cautions of these options by cause: dangers first, then the causes in their order, then the others."""
    options, ranks = tuple(options), {cause.name: rank for rank, cause in enumerate(base.causes)}
    texts: dict[str, list[str]] = {}
    for text in dict.fromkeys(caution for option in options for caution in option.cautions):
        cause = cause_of(text, base.causes)
        texts.setdefault(cause.name if cause else text, []).append(text)
    found = [_warned(base, name, tuple(same), options) for name, same in texts.items()]
    return tuple(sorted(found, key=lambda w: (not w.danger, ranks.get(w.cause, len(ranks)))))


def _warned(base: RuleBase, name: str, texts: tuple[str, ...], options: Iterable[Option]) -> Warned:
    cause = next((cause for cause in base.causes if cause.name == name), None)
    says = texts[0] if cause is None or len(texts) == 1 else cause.says
    whose = tuple(option for option in options if set(texts) & set(option.cautions))
    return Warned(cause.name if cause else "", says, cause is not None and cause.danger, texts, whose)


def mind_lines(base: RuleBase, plan: Plan, pointer: bool) -> list[str]:
    """At most three at the head of the plan. `pointer`: say how to see the rest."""
    found = warned(base, plan.advice.chosen())
    if not found:
        return []
    lines = [*heading("Mind"), *bullets(each.says for each in found[:AT_ONCE])]
    rest = len(_rest(found))
    if rest and pointer:
        lines += para(f"And {rest} more; --more tells {'them' if rest > 1 else 'it'}.", 2)
    return lines


def more_lines(base: RuleBase, plan: Plan) -> list[str]:
    """All that is not told yet, each caution once."""
    rest = _rest(warned(base, plan.advice.chosen()))
    return [*heading("More to mind"), *bullets(rest)] if rest else []


def beside(base: RuleBase, plan: Plan) -> dict[OpId, list[str]]:
    """The dangers that are past the three at the head: beside the first step of the work they belong to."""
    told: dict[OpId, list[str]] = {}
    for each in _past(warned(base, plan.advice.chosen())):
        whose = {option.id for option in each.options}
        first = next((step for step in plan.steps if whose & set(step.serves)), None)
        if first is not None:
            told.setdefault(first.op.id, []).append(f"Mind: {each.says}")
    return told


def _past(found: tuple[Warned, ...]) -> tuple[Warned, ...]:
    return tuple(each for each in found[AT_ONCE:] if each.danger)


def _rest(found: tuple[Warned, ...]) -> list[str]:
    """What neither the head tells nor the steps: first what a sentence there stands for, then all others."""
    heads = (*found[:AT_ONCE], *_past(found))
    rest = [text for each in heads for text in each.unsaid]
    return rest + [text for each in found if each not in heads for text in each.texts]


def cautions_data(base: RuleBase, plan: Plan) -> list[dict[str, Any]]:
    """All of them for programs."""
    return [
        {
            "cause": each.cause or None,
            "danger": each.danger,
            "says": each.says,
            "cautions": list(each.texts),
            "options": [option.id for option in each.options],
        }
        for each in warned(base, plan.advice.chosen())
    ]
