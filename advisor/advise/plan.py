"""The plan: the chosen options as one order of operations, worked through and checked by the finding rules."""

from collections.abc import Iterable, Mapping
from dataclasses import replace

from advisor.advise.adapter import facts_of
from advisor.advise.advise import advise
from advisor.advise.follow import follow
from advisor.advise.order import Loop, ordered
from advisor.advise.world import World
from advisor.core.advice import Plan, Step, Totals
from advisor.core.case import Choice, FindingId, Limits
from advisor.core.model import Model
from advisor.core.work import Need, Op, OpId, Option, OptionId, Spread
from advisor.errors import KnowledgeError
from advisor.knowledge.facts import Problem
from advisor.rulebase.base import RuleBase


def make_plan(base: RuleBase, world: World, choices: Mapping[FindingId, Choice], limits: Limits = Limits()) -> Plan:
    """The plan for `choices`, the first option standing in where nobody chose. KnowledgeError for a cycle.

    What remains is read off the garment as the steps in this order leave it. Fixes that cannot be done together
    show as blocked operations, and what they were for remains.
    """
    followed = follow(base, world, choices, limits)
    advice = followed.advice
    chosen = advice.chosen()
    ops, serves = merged(chosen)
    try:
        steps = tuple(Step(op, tuple(serves[op.id])) for op in ordered(ops, world.model.states))
    except Loop as loop:
        raise _looped(loop, chosen, serves) from loop
    final, blocked = work_through((step.op for step in steps), world.model)
    remains, left = advice.remains, open_problems(base, final)
    if left != {finding.id for finding in remains}:
        if not blocked:
            # All of it can be done, yet comes to another garment than the choices did stage by stage: a rule is wrong.
            odd = ", ".join(sorted(left ^ {finding.id for finding in remains}))
            raise KnowledgeError(f"the order of work leaves another garment than the choices: {odd}", where="plan")
        remains = advise(base, replace(world, model=final), {}, limits).findings
    return Plan(
        advice=advice,
        steps=steps,
        totals=totals(chosen, steps),
        materials=materials(step.op for step in steps),
        remains=remains,
        blocked=blocked,
        suggested=followed.suggested,
    )


def _looped(loop: Loop, chosen: Iterable[Option], serves: Mapping[OpId, list[OptionId]]) -> KnowledgeError:
    """A loop told by the fixes whose work makes it, each with its card."""
    those = {id for op in loop.ops for id in serves[op]}
    fixes = dict.fromkeys(f"'{option.title}' ({option.fix})" for option in chosen if option.id in those)
    return KnowledgeError(
        f"the work of {' and '.join(fixes)} waits for itself: {' -> '.join(loop.ops)}",
        where="order of work",
        hint="choose another fix for one of them; the author of the cards must mend what their operations need",
    )


def merged(options: Iterable[Option]) -> tuple[list[Op], dict[OpId, list[OptionId]]]:
    """The distinct operations of `options`, and whom each serves. KnowledgeError if one id means two things."""
    ops: dict[OpId, Op] = {}
    serves: dict[OpId, list[OptionId]] = {}
    for option in options:
        for op in option.work.ops:
            kept = ops.setdefault(op.id, op)
            if kept is not op and kept.effects != op.effects:
                raise KnowledgeError(
                    f"'{op.id}' means two different things", where=option.fix, hint="give one of them another id"
                )
            serves.setdefault(op.id, []).append(option.id)
    return list(ops.values()), serves


def work_through(ops: Iterable[Op], model: Model) -> tuple[Model, tuple[OpId, ...]]:
    """The garment after `ops` in this order, and those that could not be done.

    An operation can only be done while every state it expects holds; one that cannot changes nothing.
    """
    blocked: list[OpId] = []
    for op in ops:
        if all(model.states.get(put.key) == put.word for put in op.expects):
            model = model.apply(op.effects)
        else:
            blocked.append(op.id)
    return model, tuple(blocked)


def open_problems(base: RuleBase, model: Model) -> frozenset[FindingId]:
    """What the finding rules say of a garment: the verifier is the finding layer and nothing else."""
    return frozenset(problem.id for problem in base.engine.run(facts_of(model, base.read)).of(Problem))


def totals(chosen: Iterable[Option], steps: tuple[Step, ...]) -> Totals:
    """The plan's figures. Leaving something as it is counts for nothing."""
    working = [option for option in chosen if option.closes]
    minutes = Spread(0, 0, 0)
    for step in steps:
        minutes = minutes + step.op.minutes
    return Totals(
        difficulty=max((option.grades.difficulty for option in working), default=1),
        durability=min((option.grades.durability for option in working), default=5),
        visibility=max((option.grades.visibility for option in working), default=1),
        minutes=minutes,
        irreversible=sum(not step.op.reversible for step in steps),
    )


def materials(ops: Iterable[Op]) -> tuple[Need, ...]:
    """What to have at hand, each thing once."""
    amounts: dict[str, list[str]] = {}
    for op in ops:
        for need in op.materials:
            entry = amounts.setdefault(need.what, [])
            if need.amount and need.amount not in entry:
                entry.append(need.amount)
    return tuple(Need(what, "; ".join(amounts[what])) for what in sorted(amounts))
