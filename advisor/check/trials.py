"""Trying the rules on every probe, with the first option and with each other one, and noting what happened.

The checks of reach, stages, rivals and spoiling read these notes; none of them runs anything itself.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction

from advisor.advise.advise import advise
from advisor.advise.follow import follow
from advisor.advise.order import ordered
from advisor.advise.plan import merged, work_through
from advisor.check import probes
from advisor.check.drafting import draft_plan
from advisor.check.material import Material
from advisor.check.probes import Probe, answers_in, gated, probe_of
from advisor.check.spoiling import Spoiling
from advisor.check.watching import Noted, Watching, problems_of
from advisor.core.advice import Plan
from advisor.core.case import Choice, FindingId, FixId
from advisor.core.model import Key, Mm, Model, Put, Value
from advisor.core.stages import Stage
from advisor.core.work import Op, Option
from advisor.engine import Run
from advisor.errors import AdvisorError, KnowledgeError
from advisor.knowledge.cards import Answer, Card, Find, Veto
from advisor.knowledge.facts import Offer, Problem
from advisor.knowledge.facts import Veto as Ruling
from advisor.rulebase.base import RuleBase
from advisor.rulebase.garment import Garment

TRIES = 1  # plans in which an option other than the first is chosen for a problem
MOST_PLANS = 450


@dataclass(frozen=True)
class Broken:
    """A plan that could not be made: what was said, the card it began in, and on what world."""

    what: str
    where: str
    hint: str
    told: str


@dataclass
class Trials:
    """What was seen on all probes. Each record keeps the first world that showed it.

    writes: who leaves a key other than it was, by garment, key and the stage of the finding it was chosen for (its
    effects are in from then on): fix, operation and problem.
    shut: problems for which no option stands, with the rules that rule them out. most: the largest amount of each
    problem found on each garment. cases: the plan of each case that comes to one, without its words.
    in_cases, in_worlds: rules that fired and fixes that were offered on cases, and on any garment whose work, if there
    was some, was done right. spoiled: what was seen where it was not.
    """

    base: RuleBase
    noted: Noted
    spoiled: Noted
    spoiling: Spoiling
    plans: int = 0
    worlds: int = 0
    offered: set[FixId] = field(default_factory=set)
    tried: dict[tuple[str, FixId], int] = field(default_factory=dict)
    reads: set[Key] = field(default_factory=set)
    ops: dict[tuple[str, FixId, str], Op] = field(default_factory=dict)
    puts: set[tuple[Key, str]] = field(default_factory=set)
    writes: dict[tuple[str, Key, Stage], tuple[FixId, str, str]] = field(default_factory=dict)
    blocked: dict[tuple[FixId, str], str] = field(default_factory=dict)
    unclosed: dict[tuple[str, FixId], str] = field(default_factory=dict)
    shut: dict[tuple[str, ...], dict[str, str]] = field(default_factory=dict)
    broken: dict[tuple[str, str], Broken] = field(default_factory=dict)
    most: dict[tuple[str, str], Mm] = field(default_factory=dict)
    cases: dict[str, Plan] = field(default_factory=dict)
    in_cases: frozenset[str] = frozenset()
    in_worlds: frozenset[str] = frozenset()

    @property
    def fired(self) -> set[str]:
        """The rules that fired anywhere."""
        return self.noted.fired | self.spoiled.fired


def trials_of(material: Material) -> Trials:
    """The notes of all trials, made once for each material."""
    return material.once(_tried)


def _tried(material: Material) -> Trials:
    return _Trying(material).all()


class _Trying:
    def __init__(self, material: Material) -> None:
        self.material = material
        self.noted = Noted(material.rules)
        self.engine = Watching(material, self.noted, sorted(material.sound))
        self.base: RuleBase = material.base(self.engine)
        # Work done wrong is noticed by findings; the rules that answer them need not run for that.
        findings = [id for id, _ in material.of(Find) if id in material.sound]
        spoiled = Noted(material.rules)
        self.trials = Trials(self.base, self.noted, spoiled, Spoiling(Watching(material, spoiled, findings)))
        self.planned: set[tuple[str, ...]] = set()
        self.waited: set[str] = set()
        self.found: dict[tuple[str, str], dict[Mm, Mapping[Key, Value]]] = {}

    def all(self) -> Trials:
        # A case is of many findings: what can be tried in a plainer world is tried there.
        for probe in probes.of_cases(self.material):
            if self._look(probe):
                plan = self._plan(probe, {})
                if plan:
                    self.trials.cases[probe.told] = plan
        self.trials.in_cases = self._so_far()
        count = len(self.material.garments)
        seen: dict[tuple[str, str, Value], int] = {}
        for _, garment in sorted(self.material.garments.items()):
            for probe in probes.alone(garment, count, seen):
                self._try_new(probe)
            for probe in probes.both_ways(garment):
                self._try_new(probe)
            for probe in probes.together(garment, count):
                self._try(probe)
        for _, garment in sorted(self.material.garments.items()):
            self._by_example(garment)
        for probe in probes.of_cases(self.material):
            self._others(probe, self.trials.cases.get(probe.told))
        self.trials.in_worlds = self._so_far()
        self._left_behind()
        return self.trials

    def _so_far(self) -> frozenset[str]:
        """The rules that fired, and the fixes offered."""
        return frozenset(self.noted.fired | self.trials.offered)

    def _left_behind(self) -> None:
        """Garments that spoiled work left in a state nobody could answer: a seam open, a press due.

        Their options are sized and no more: half-done work has no order to hold to. What was offered is known by now.
        """
        spoiling = self.trials.spoiling
        while spoiling.left:
            problem, probe = spoiling.left.popitem()
            answers = {id for id, _ in self.material.answers.get(problem, [])} & self.material.sound
            if problem not in spoiling.handled and not answers <= self.trials.fired:
                spoiling.handled.add(problem)
                try:
                    advice = advise(self.base, probe.world, {}, told=False)
                    self.trials.offered |= {option.fix for option in advice.options}
                except Exception as fault:  # a fix may raise anything
                    self._broke(probe, fault, {})

    def _by_example(self, garment: Garment) -> None:
        """Worlds made from the examples of those cards that nothing has reached so far."""
        for kind in (Find, Answer, Veto):
            for id, card in self.material.of(kind):
                if id in self.material.sound and id not in self.noted.fired and _there(garment, card):
                    for problem, mm in _problems(card):
                        having = {**self._having(garment, problem, mm), **self._offering(garment, problem, card)}
                        answers = gated(garment, {**having, **answers_in(garment, card.fires[0].facts)})
                        self._try_new(probe_of(garment, answers), id)

    def _offering(self, garment: Garment, problem: str, card: object) -> Mapping[Key, Value]:
        """Answers with which the fix a veto speaks of is offered for this problem."""
        for _, answer in self.material.of(Answer):
            if isinstance(card, Veto) and answer.problem == problem and answer.fix in card.fixes and answer.fires:
                return answers_in(garment, answer.fires[0].facts)
        return {}

    def _having(self, garment: Garment, problem: str, mm: Mm) -> Mapping[Key, Value]:
        """Answers with which this problem is found, with an amount as near to `mm` as was seen."""
        amounts = self.found.get((garment.id, problem))
        if amounts:
            return amounts[min(amounts, key=lambda seen: (len(amounts[seen]) // 4, abs(seen - mm), seen))]
        for id in self.material.problems.get(problem, []):
            return answers_in(garment, self.material.rules[id].fires[0].facts)
        return {}

    def _try_new(self, probe: Probe, id: str = "") -> None:
        """Look at a world, and make plans for it if something is found or offered there that no plan had before.

        `id`: the card it is meant for. What shows only in the course of work, shows in a plan: if the card stays
        silent there is one all the same.
        """
        run = self._look(probe)
        shown = _shown(run) if run else set()
        waits = bool(id) and id not in self.noted.fired and probe.told not in self.waited
        if shown and (waits or not shown <= self.planned):
            self.planned |= shown
            self.waited.add(probe.told)
            self._plans(probe)

    def _look(self, probe: Probe) -> Run | None:
        self.noted.told = probe.told
        self.trials.worlds += 1
        try:
            run = self.engine.see(probe.world.model, self.base.read)
        except Exception as fault:  # an author's function may raise anything
            self._broke(probe, fault, {})
            return None
        for problem in problems_of(run):
            self._found(probe, problem.name, problem.mm)
        return run

    def _found(self, probe: Probe, problem: str, mm: Mm) -> None:
        key = (probe.world.garment.id, problem)
        self.trials.most[key] = max(mm, self.trials.most.get(key, mm))
        if probe.answers:
            self.found.setdefault(key, {}).setdefault(mm, probe.answers)

    def _try(self, probe: Probe) -> None:
        if self._look(probe):
            self._plans(probe)

    def _plans(self, probe: Probe) -> None:
        """The plan as it comes, then one for each option not taken so far."""
        self._others(probe, self._plan(probe, {}))

    def _others(self, probe: Probe, plan: Plan | None) -> None:
        for option in plan.advice.options if plan else ():
            # Leaving a thing as it is has no work to go wrong.
            if option.open and option.work.ops and self.trials.tried.get(_pair(plan, option), 0) < TRIES:
                self._plan(probe, {option.finding: Choice(option.fix)})

    def _plan(self, probe: Probe, choices: dict[FindingId, Choice]) -> Plan | None:
        if self.trials.plans >= MOST_PLANS:
            return None
        self.trials.plans += 1
        try:
            plan = draft_plan(self.base, probe.world, {**probe.choices, **choices}, probe.limits, self._problems)
        except Exception as fault:  # a fix may raise anything
            self._broke(probe, fault, choices)
            return None
        for option in plan.advice.options:
            self._note_option(probe, plan, option)
        self._note_plan(probe, plan)
        self.trials.spoiling.spoil(self.base, probe, plan)
        return plan

    def _problems(self, model: Model) -> set[FindingId]:
        return self.trials.spoiling.found(self.base, model)

    def _broke(self, probe: Probe, fault: Exception, choices: Mapping[FindingId, Choice]) -> None:
        """Note a plan that could not be made; where operations in it could not be done, note those instead."""
        if isinstance(fault, KnowledgeError) and fault.where == "plan" and self._undoable(probe, choices):
            return
        ours = fault if isinstance(fault, AdvisorError) else None
        said = ours.what if ours else f"{type(fault).__name__}: {fault}"
        where = ours.where if ours and ours.where not in ("", "plan", "order of work") else _raiser(fault)
        chosen = "".join(f", {choice.fix} for {finding}" for finding, choice in choices.items())
        for finding, choice in choices.items():
            self.trials.tried.setdefault((finding.partition("@")[0], choice.fix), 1)
        broken = Broken(
            said, where or next((c.fix for c in choices.values()), ""), ours.hint if ours else "", probe.told + chosen
        )
        self.trials.broken.setdefault((said, where), broken)

    def _undoable(self, probe: Probe, choices: Mapping[FindingId, Choice]) -> bool:
        followed = follow(self.base, probe.world, {**probe.choices, **choices}, probe.limits, told=False)
        ops, serves = merged(followed.advice.chosen())
        _, blocked = work_through(ordered(ops, probe.world.model.states), probe.world.model)
        for op in blocked:
            self.trials.blocked.setdefault((serves[op][0].partition(">")[2], op), probe.told)
        return bool(blocked)

    def _note_option(self, probe: Probe, plan: Plan, option: Option) -> None:
        finding = plan.advice.finding(option.finding)
        assert finding is not None
        self.trials.offered.add(option.fix)
        for op in option.work.ops:
            self.trials.ops.setdefault((probe.world.garment.id, option.fix, op.id), op)
            self.trials.puts |= {(e.key, e.word) for e in op.effects if isinstance(e, Put)}
        for written, op_id in _net(option.work.ops).items():
            key = (probe.world.garment.id, written, finding.stage)
            self.trials.writes.setdefault(key, (option.fix, op_id, finding.problem))
        if plan.advice.choices.get(option.finding, Choice("")).fix == option.fix:
            pair = _pair(plan, option)
            self.trials.tried[pair] = self.trials.tried.get(pair, 0) + 1
            left = {finding.id for finding in plan.remains}
            if option.closes and option.open and not option.work.leaves and option.finding in left:
                self.trials.unclosed.setdefault(pair, probe.told)

    def _note_clashes(self, probe: Probe, plan: Plan) -> None:
        """One fix at two places whose operations have one name and are not the same: they never go together."""
        seen: dict[tuple[str, FixId, str], tuple[FindingId, Op]] = {}
        for option in plan.advice.options:
            for op in option.work.ops if option.open else ():
                first = seen.setdefault((*_pair(plan, option), op.id), (option.finding, op))
                if first[0] != option.finding and first[1].effects != op.effects:
                    said = f"'{op.id}' means two different things"
                    broken = Broken(said, option.fix, "give one of them another id", probe.told)
                    self.trials.broken.setdefault((said, option.fix), broken)

    def _note_plan(self, probe: Probe, plan: Plan) -> None:
        self._note_clashes(probe, plan)
        self.trials.reads |= plan.advice.reads
        serves = {step.op.id: step.serves for step in plan.steps}
        for op in plan.blocked:
            self.trials.blocked.setdefault((serves[op][0].partition(">")[2], op), probe.told)
        for finding in plan.advice.findings:
            self._found(probe, finding.problem, finding.amount or Mm(0))
            options = plan.advice.options_for(finding.id)
            if options and not any(option.open for option in options):
                rulers = tuple(sorted({ruling.rule for option in options for ruling in option.rulings if ruling.rule}))
                self.trials.shut.setdefault(rulers, {}).setdefault(finding.problem, probe.told)


def _pair(plan: Plan | None, option: Option) -> tuple[str, FixId]:
    finding = plan.advice.finding(option.finding) if plan else None
    assert finding is not None
    return finding.problem, option.fix


def _shown(run: Run) -> set[tuple[str, ...]]:
    """What a plan could be about: each problem, and each problem with a fix that nothing rules out."""
    made = [fact for firing in run.firings for fact in firing.conclusions]
    ruled_out = {(fact.problem, fact.fix) for fact in made if isinstance(fact, Ruling)}
    shown: set[tuple[str, ...]] = {(fact.name,) for fact in made if isinstance(fact, Problem)}
    offers = (fact for fact in made if isinstance(fact, Offer))
    return shown | {(fact.name, fact.fix) for fact in offers if (fact.problem, fact.fix) not in ruled_out}


def _net(ops: tuple[Op, ...]) -> dict[Key, str]:
    """The keys these operations leave other than they were, each with the first operation that writes it.

    A seam that is opened and sewn again is as it was.
    """
    first: dict[Key, str] = {}
    before: dict[Key, str] = {}
    after: dict[Key, str] = {}
    sums: dict[Key, Fraction] = {}
    for op in ops:
        for put in op.expects:
            before.setdefault(put.key, put.word if put.key not in after else "")
        for effect in op.effects:
            first.setdefault(effect.key, op.id)
            if isinstance(effect, Put):
                after[effect.key] = effect.word
            else:
                sums[effect.key] = sums.get(effect.key, Fraction(0)) + effect.mm
    return {key: op for key, op in first.items() if sums.get(key) or (key in after and after[key] != before.get(key))}


def _there(garment: Garment, card: Card) -> bool:
    """Whether the garment has a place of every role in the card's first example."""
    roles = {place.role for place in garment.places.values()}
    return bool(card.fires) and all(fact.get("role", "") in roles for fact in card.fires[0].facts)


def _problems(card: object) -> list[tuple[str, Mm]]:
    """The problems a card's first example speaks of, and their amounts."""
    if isinstance(card, Find):
        return [(card.problem, card.fires[0].amount or Mm(0))]
    assert isinstance(card, Answer | Veto)
    return [(fact.name, fact.mm) for fact in card.fires[0].facts if isinstance(fact, Problem)]


def _raiser(fault: Exception) -> str:
    """The card or module in which an exception began."""
    trace, found = fault.__traceback__, ""
    while trace is not None:
        name = str(trace.tb_frame.f_globals.get("__name__", ""))
        if name.startswith(("advisor.rules.", "advisor.operations")):
            found = name.removeprefix("advisor.rules.")
        trace = trace.tb_next
    return found
