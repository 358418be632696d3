"""Shared by the tests of the rules: choose one option, work it through, then spoil it in every way a hand can.

A plan is spoiled by leaving one operation out, or by one number being off by one mark of the tape either way.
The finding rules, run on the garment that comes of it, must say so: that is what makes them a verifier.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from functools import cache

from advisor.advise.plan import make_plan, open_problems, work_through
from advisor.advise.world import World, world_of
from advisor.core.advice import Plan
from advisor.core.case import Case, Choice, FindingId, Known
from advisor.core.model import Change
from advisor.core.work import Op, Option
from advisor.lengths import read_length
from advisor.rulebase.base import RuleBase, the_base

Answers = Mapping[str, str]


@dataclass(frozen=True)
class Worked:
    """One garment with one option chosen, and the plan that comes of it."""

    base: RuleBase
    world: World
    plan: Plan
    option: Option

    @property
    def ops(self) -> tuple[Op, ...]:
        """The operations of the plan in order."""
        return tuple(step.op for step in self.plan.steps)

    def still_open(self, ops: tuple[Op, ...]) -> frozenset[FindingId]:
        """What the finding rules say after these operations instead."""
        return open_problems(self.base, work_through(ops, self.world.model)[0])


@cache
def base() -> RuleBase:
    """The rule base that comes with the program."""
    return the_base()


def world_for(answers: Answers, garment: str = "one_piece", tape: str = "in") -> World:
    """A world from answers in words: lengths as on a tape, the rest a word of the question."""
    shape = base().garment(garment)
    known = {
        key: Known(text if shape.questions[key].kind == "word" else read_length(text, unit="in"))
        for key, text in answers.items()
    }
    return world_of(Case(garment, "a test", tape=tape, answers=known), shape)  # type: ignore[arg-type]


def plan_for(
    answers: Answers, choices: Mapping[FindingId, str] | None = None, garment: str = "one_piece", tape: str = "in"
) -> Plan:
    """The plan for answers, with fixes chosen by finding; the first option stands in elsewhere."""
    made = {finding: Choice(fix) for finding, fix in (choices or {}).items()}
    return make_plan(base(), world_for(answers, garment, tape), made)


def worked(
    answers: Answers,
    finding: FindingId,
    fix: str,
    also: Mapping[FindingId, str] | None = None,
    garment: str = "one_piece",
    tape: str = "in",
) -> Worked:
    """The garment with `fix` chosen for `finding`, and `also` for others."""
    world = world_for(answers, garment, tape)
    choices = {finding: Choice(fix), **{other: Choice(name) for other, name in (also or {}).items()}}
    plan = make_plan(base(), world, choices)
    option = next(o for o in plan.advice.options if o.finding == finding and o.fix == fix)
    return Worked(base(), world, plan, option)


def closes(work: Worked, left: frozenset[FindingId] = frozenset()) -> None:
    """The plan does all it says, in its order, and leaves nothing but `left`."""
    assert work.option.open, [ruling.words for ruling in work.option.rulings]
    assert work.plan.blocked == ()
    assert {finding.id for finding in work.plan.remains} == left


def spoiled(work: Worked) -> Iterator[tuple[str, tuple[Op, ...]]]:
    """Every way to spoil the chosen option: words for it, and the operations of the plan spoiled that way."""
    own = {op.id for op in work.option.work.ops}
    for index, op in enumerate(work.ops):
        if op.id not in own:
            continue
        yield f"without '{op.id}'", work.ops[:index] + work.ops[index + 1 :]
        for at, effect in enumerate(op.effects):
            if not isinstance(effect, Change):
                continue
            for marks in (-1, 1):
                wrong = Change(effect.key, replace(effect.by, value=effect.mm + marks * work.world.tape.mark))
                other = replace(op, effects=(*op.effects[:at], wrong, *op.effects[at + 1 :]))
                words = f"'{op.id}' with {effect.key} {marks:+d} mark"
                yield words, (*work.ops[:index], other, *work.ops[index + 1 :])


def notices(work: Worked) -> int:
    """Every way to spoil the option leaves something open that was not; how many ways were tried.

    AssertionError names the first that nobody would have noticed.
    """
    fine, tried = work.still_open(work.ops), 0
    for words, ops in spoiled(work):
        assert work.still_open(ops) - fine, f"nothing notices {work.option.fix} {words}"
        tried += 1
    return tried
