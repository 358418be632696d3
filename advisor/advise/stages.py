"""One pass through the stages: findings read off, options ranked, choices put into the garment.

How findings and options come to be is left to `told.py`, for a person, and `compared.py`, for sweeps.
"""

from abc import ABC, abstractmethod
from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction
from functools import cached_property
from types import MappingProxyType

from advisor.advise.kept import Kept
from advisor.advise.lookahead import At, look
from advisor.advise.order import hindered
from advisor.advise.seen import Seen
from advisor.advise.sizing import Sized, bench, size
from advisor.advise.world import World
from advisor.core.advice import Advice
from advisor.core.case import Choice, FindingId, Limits
from advisor.core.model import Key, Model, Value
from advisor.core.stages import STAGES, Stage
from advisor.core.trace import Trace
from advisor.core.work import Finding, Grades, NodeId, Op, OpId, Option, Ruling
from advisor.errors import AdvisorError, KnowledgeError
from advisor.knowledge.cards import Card
from advisor.knowledge.facts import Offer, Problem
from advisor.knowledge.fix import Fix
from advisor.knowledge.view import Trouble
from advisor.rulebase.base import RuleBase
from advisor.words import retold

Job = tuple[Option, Sequence[Op]]

START = "start"
"""What a garment has come through before the first stage."""

NOTHING = Fraction(0)
KEPT = 4096
_graded: Kept[Grades] = Kept(KEPT)


class Pass(ABC):
    """The garment as it stands, what is seen of it, and what was decided so far."""

    def __init__(
        self, base: RuleBase, world: World, choices: Mapping[FindingId, Choice], limits: Limits, fill: bool
    ) -> None:
        self.base, self.world, self.choices, self.limits = base, world, dict(choices), limits
        self.fill = fill
        self.bench = bench(world.garment.id, world.tape)
        self.suggested: list[FindingId] = []
        self.findings: dict[FindingId, Finding] = {}
        self.options: dict[FindingId, Sequence[Option]] = {}
        self.done: set[OpId] = set()
        self.work: list[Op] = []
        self.careful = False
        self.reads: set[Key] = set()
        self._at: At | None = None
        self._become(world.model, START)

    @abstractmethod
    def read(self, problem: Problem) -> Finding:
        """A problem as a finding, of the first rule that found it."""

    @abstractmethod
    def ranked(self, finding: Finding) -> Sequence[Option]:
        """The options for a finding, best first."""

    @abstractmethod
    def worked(self, jobs: Sequence[Job]) -> Model:
        """The garment with the effects of these operations, each with the option it is done for."""

    @abstractmethod
    def trace(self) -> Trace:
        """How everything came about."""

    def run(self) -> Advice:
        """The advice."""
        for stage in STAGES:
            here = [self.read(problem) for problem in self.seen.at(stage) if problem.id not in self.findings]
            for finding in here:
                self.findings[finding.id] = finding
                self.options[finding.id] = self.ranked(finding)
            self._take(here, stage)
        return Advice(
            findings=tuple(self.findings.values()),
            options=tuple(option for options in self.options.values() for option in options),
            choices=MappingProxyType({id: c for id, c in self.choices.items() if id in self.findings}),
            idle=tuple(sorted(set(self.choices) - set(self.findings))),
            model=self.model,
            remains=tuple(self.read(problem) for problem in self.seen.problems),
            trace=self.trace(),
            reads=frozenset(self.reads),
            suggested=tuple(self.suggested),
        )

    def _become(self, model: Model, after: str) -> None:
        self.model = model
        self._values: dict[Key, Value] = {}
        self._grading: tuple[tuple[Key, str | None], ...] | None = None
        before, self._at = self._at, (self.world.garment.id, after)
        self.seen = Seen(look(self.base, self._at, model, before))

    @property
    def values(self) -> Mapping[Key, Value]:
        """The measures and states of the garment in one."""
        if not self._values:
            self._values.update(self.model.states)
            self._values.update(self.model.measures)
        return self._values

    def _take(self, here: Iterable[Finding], stage: Stage) -> None:
        """Put the effects of the choices for these findings into the garment, and look at it again."""
        jobs: list[Job] = []
        for finding in here:
            option = self._chosen(finding.id)
            if option is not None:
                ops = [op for op in option.work.ops if op.id not in self.done]
                self.done.update(op.id for op in ops)
                self.work += ops
                jobs.append((option, ops))
        model = self.worked(jobs)
        if model is not self.model:
            self._become(model, stage)

    def _chosen(self, finding: FindingId) -> Option | None:
        """The option taken for a finding: the one chosen, else, when filling, the first that stands."""
        options = self.options[finding]
        if finding in self.choices:
            return next((option for option in options if option.fix == self.choices[finding].fix), None)
        standing = [option for option in options if option.open]
        if not self.fill or not standing:
            return None
        first = next((option for option in standing if not self.careful or self._goes(option)), standing[0])
        self.choices[finding] = Choice(first.fix)
        self.suggested.append(finding)
        return first

    def _goes(self, option: Option) -> bool:
        """Whether its work and what was taken before do not get in each other's way."""
        new = [op for op in option.work.ops if op.id not in self.done]
        return not hindered([*self.work, *new], self.world.model.states)

    def fix(self, offer: Offer) -> Fix:
        """The card of the fix offered. KnowledgeError if there is none."""
        if offer.fix not in self.base.fixes:
            rules = ", ".join(self.seen.run.concluded_by(offer))
            raise KnowledgeError(f"no fix '{offer.fix}'", where=rules, hint="see `advisor rules list`")
        return self.base.fixes[offer.fix]

    def sized(self, finding: Finding, offer: Offer) -> Sized:
        """What a fix comes to for a finding, on the garment as it stands."""
        trouble = Trouble(finding.id, finding.problem, finding.place, offer.role, finding.amount or NOTHING)
        sized = size(self.bench, self.fix(offer), trouble, self.model, self.world.tape, self.values)
        self.reads |= sized.reads
        return sized

    def option(self, finding: Finding, offer: Offer, sized: Sized, node: NodeId, rulings: Sequence[Ruling]) -> Option:
        """An option put together."""
        fix = self.fix(offer)
        return Option(
            id=f"{finding.id}>{offer.fix}",
            finding=finding.id,
            fix=offer.fix,
            title=retold(fix.title, self.world.tape),
            reason=self.base.rules[self.seen.rule_of(offer)].why,
            why=fix.why,
            wrong_when=fix.wrong_when,
            source=fix.source,
            grades=self._grades(fix),
            cautions=fix.cautions,
            work=sized.work,
            closes=fix.closes,
            node=node,
            rulings=tuple(rulings),
        )

    def _grades(self, fix: Fix) -> Grades:
        token = (self.base, fix, self.grading)
        return _graded.get(token) or _graded.put(token, self.base.grades.grade(fix, self.model))

    @property
    def grading(self) -> tuple[tuple[Key, str | None], ...]:
        """All that grades look at in this garment."""
        if self._grading is None:
            self._grading = tuple((key, self.model.states.get(key)) for key in self._graded_keys)
        return self._grading

    @cached_property
    def _graded_keys(self) -> tuple[Key, ...]:
        shape, places = self.base.grades.shape, self.model.places.values()
        looked_at = [(shift.role, shift.slot) for shift in shape.shift] + [(cap.role, cap.slot) for cap in shape.cap]
        return tuple(f"{place.name}.{slot}" for role, slot in looked_at for place in places if place.role == role)


def finding_of(problem: Problem, card: Card, words: str, node: NodeId) -> Finding:
    """A problem as a finding."""
    return Finding(
        id=problem.id,
        problem=problem.name,
        title=card.title,
        place=problem.place,
        stage=problem.stage,  # type: ignore[arg-type]  # the slot allows these words only
        amount=problem.mm if problem.mm else None,
        words=words,
        node=node,
        source=card.source,
    )


def unsized(fault: AdvisorError) -> str:
    """Why an option that cannot be reckoned is ruled out."""
    return f"It cannot be worked out here: {fault.what}."
