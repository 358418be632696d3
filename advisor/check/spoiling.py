"""Spoiling plans: one operation left out, or one number off by one mark of the tape. Some finding must notice."""

from collections.abc import Iterator
from dataclasses import dataclass, field, replace

from advisor.advise.plan import work_through
from advisor.check.probes import Probe
from advisor.check.watching import Watching, problems_of
from advisor.core.advice import Plan
from advisor.core.case import FindingId, FixId
from advisor.core.model import Change, Key, Mm, Model
from advisor.core.work import Op
from advisor.rulebase.base import RuleBase


@dataclass
class Spoiling:
    """Each operation is spoiled once: equal ids that write equal keys are the same work, whatever fix it serves.

    missed    ways that nothing noticed, with the first world
    left      garments that came of it, by a problem they have; `handled`: the problems seen on such a garment already
    """

    engine: Watching
    seen: set[tuple[str, frozenset[Key]]] = field(default_factory=set)
    missed: dict[tuple[FixId, str, str], str] = field(default_factory=dict)
    left: dict[str, Probe] = field(default_factory=dict)
    handled: set[str] = field(default_factory=set)
    ways: int = 0

    def spoil(self, base: RuleBase, probe: Probe, plan: Plan) -> None:
        """Every operation of the plan that was not spoiled before."""
        ops = tuple(step.op for step in plan.steps)
        fine: set[tuple[str, Mm]] | None = None
        for index, step in enumerate(plan.steps):
            work = step.op.id, frozenset(effect.key for effect in step.op.effects)
            if work in self.seen or step.op.id in plan.blocked:
                continue
            fine = self._open(base, work_through(ops, probe.world.model)[0]) if fine is None else fine
            self.seen.add(work)
            fix = step.serves[0].partition(">")[2]
            for way, other in _ways(step.op, probe.world.tape.mark):
                self.ways += 1
                spoiled = work_through((*ops[:index], *other, *ops[index + 1 :]), probe.world.model)[0]
                new = self._open(base, spoiled) - fine
                if not new:
                    self.missed.setdefault((fix, step.op.id, way), probe.told)
                told = (
                    f"{probe.told}; then '{step.op.id}' with {way}"
                    if other
                    else f"{probe.told}; without '{step.op.id}'"
                )
                for finding, _ in sorted(new):
                    problem = finding.partition("@")[0]
                    if problem not in self.handled:
                        self.left.setdefault(
                            problem, replace(probe, told=told, world=replace(probe.world, model=spoiled))
                        )

    def found(self, base: RuleBase, model: Model) -> set[FindingId]:
        """The problems of a garment."""
        return {problem for problem, _ in self._open(base, model)}

    def _open(self, base: RuleBase, model: Model) -> set[tuple[str, Mm]]:
        return {(problem.id, problem.mm) for problem in problems_of(self.engine.see(model, base.read))}


def _ways(op: Op, mark: Mm) -> Iterator[tuple[str, tuple[Op, ...]]]:
    yield "leaving it out", ()
    for at, effect in enumerate(op.effects):
        if isinstance(effect, Change):
            for marks, words in ((-1, "one mark less"), (1, "one mark more")):
                by = replace(effect.by, value=effect.mm + marks * mark)
                effects = (*op.effects[:at], Change(effect.key, by), *op.effects[at + 1 :])
                yield f"{words} of {effect.key}", (replace(op, effects=effects),)
