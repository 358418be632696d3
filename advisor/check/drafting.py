"""Plans for looking at, not for telling: the same work as `make_plan` comes to, in a third of the time."""

from collections.abc import Callable, Mapping, Set
from dataclasses import replace

from advisor.advise.advise import advise
from advisor.advise.follow import follow
from advisor.advise.order import ordered
from advisor.advise.plan import merged, totals, work_through
from advisor.advise.world import World
from advisor.core.advice import Plan, Step
from advisor.core.case import Choice, FindingId, Limits
from advisor.core.model import Model
from advisor.errors import KnowledgeError
from advisor.rulebase.base import RuleBase


def draft_plan(
    base: RuleBase,
    world: World,
    choices: Mapping[FindingId, Choice],
    limits: Limits,
    found: Callable[[Model], Set[FindingId]],
) -> Plan:
    """The plan without words, trace and materials. A test holds it equal to `make_plan` in all else.

    `found`: what the finding rules say of a garment.
    """
    followed = follow(base, world, choices, limits, told=False)
    chosen = followed.advice.chosen()
    ops, serves = merged(chosen)
    steps = tuple(Step(op, tuple(serves[op.id])) for op in ordered(ops, world.model.states))
    final, blocked = work_through((step.op for step in steps), world.model)
    remains = followed.advice.remains
    left = found(final)
    if left != {finding.id for finding in remains}:
        if not blocked:
            odd = ", ".join(sorted(left ^ {finding.id for finding in remains}))
            raise KnowledgeError(f"the order of work leaves another garment than the choices: {odd}", where="plan")
        remains = advise(base, replace(world, model=final), {}, limits, told=False).findings
    return Plan(followed.advice, steps, totals(chosen, steps), (), remains, blocked, followed.suggested)
