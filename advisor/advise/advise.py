"""`advise`: the only door to the engine. Pure; the same world, choices and limits give the same advice.

Stage by stage: the rules run on the garment, findings of the stage are read off, their options sized and
ranked, and the effects of the choices made put into the garment before the next stage is looked at.
"""

from collections import OrderedDict
from collections.abc import Iterable, Mapping
from fractions import Fraction
from types import MappingProxyType

from advisor.advise.adapter import facts_of
from advisor.advise.lookahead import look
from advisor.advise.rank import rank
from advisor.advise.sizing import size
from advisor.advise.tracing import Tracer, Untold
from advisor.advise.world import World
from advisor.core.advice import Advice
from advisor.core.case import Choice, FindingId, Limits
from advisor.core.model import Key
from advisor.core.stages import STAGES, Stage
from advisor.core.work import Finding, NodeId, OpId, Option, Ruling
from advisor.engine import Firing, Run, SlotFact
from advisor.errors import AdvisorError, KnowledgeError
from advisor.knowledge.cards import Card
from advisor.knowledge.facts import Offer, Problem, Veto
from advisor.knowledge.view import Trouble
from advisor.rulebase.base import RuleBase
from advisor.rulebase.specs import call
from advisor.words import Teller

KEPT = 256  # an advice holds its whole trace; a sitting makes thousands
_remembered: OrderedDict[object, Advice] = OrderedDict()


def advise(
    base: RuleBase,
    world: World,
    choices: Mapping[FindingId, Choice],
    limits: Limits = Limits(),
    *,
    fill: bool = False,
    told: bool = True,
) -> Advice:
    """Findings, ranked options and the garment after `choices`. KnowledgeError if rules contradict each other.

    fill: where nothing was chosen, the first option that stands is taken, so that every knock-on shows.
    told: with words and trace; a sweep over hundreds of worlds needs neither.
    """
    token = (
        base, world.model.digest(), world.tape, world.assumed, world.unknown, limits, fill, told,
        tuple(sorted(world.given.items(), key=lambda item: item[0])),
        tuple(sorted((finding, choice.fix) for finding, choice in choices.items())),
    )  # fmt: skip
    if token in _remembered:
        _remembered.move_to_end(token)
        return _remembered[token]
    advice = _Advising(base, world, choices, limits, fill, told).run()
    _remembered[token] = advice
    if len(_remembered) > KEPT:
        _remembered.popitem(last=False)
    return advice


class _Advising:
    """One pass through the stages."""

    def __init__(
        self,
        base: RuleBase,
        world: World,
        choices: Mapping[FindingId, Choice],
        limits: Limits,
        fill: bool,
        told: bool,
    ) -> None:
        self.base, self.world, self.choices, self.limits = base, world, dict(choices), limits
        self.fill, self.told = fill, told
        self.suggested: list[FindingId] = []
        self.teller = Teller(world.tape, world.garment.places)
        self.tracer = Tracer(world, self.teller) if told else Untold(world, self.teller)
        self.model = world.model
        self.run_now = self._engine()
        self.findings: dict[FindingId, Finding] = {}
        self.options: list[Option] = []
        self.done: set[OpId] = set()
        self.reads: set[Key] = set()

    def run(self) -> Advice:
        for stage in STAGES:
            here = self._new_findings(stage)
            for finding in here:
                self.findings[finding.id] = finding
                self.options.extend(rank(self._options(finding), self.limits))
            if self._take(here):
                self.run_now = self._engine()
        remains = tuple(self._read(problem) for problem in self._problems())
        return Advice(
            findings=tuple(self.findings.values()),
            options=tuple(self.options),
            choices=MappingProxyType({id: c for id, c in self.choices.items() if id in self.findings}),
            idle=tuple(sorted(set(self.choices) - set(self.findings))),
            model=self.model,
            remains=remains,
            trace=self.tracer.trace(),
            reads=frozenset(self.reads),
            suggested=tuple(self.suggested),
        )

    def _engine(self) -> Run:
        facts = facts_of(self.model, self.base.read)
        return self.base.engine.run(facts) if self.told else look(self.base, facts)

    def _problems(self) -> list[Problem]:
        problems = self.run_now.of(Problem)
        seen: dict[FindingId, Problem] = {}
        for problem in problems:
            other = seen.setdefault(problem.id, problem)
            if other.mm != problem.mm:
                rules = sorted({f.rule for p in (other, problem) for f in self.run_now.justifications(p)})
                raise KnowledgeError(
                    f"two amounts for {problem.id}", where=", ".join(rules), hint="let one rule reckon the amount"
                )
        return sorted(seen.values(), key=lambda p: (STAGES.index(_stage(p)), p.id))

    def _new_findings(self, stage: Stage) -> list[Finding]:
        return [
            self._read(problem)
            for problem in self._problems()
            if problem.stage == stage and problem.id not in self.findings
        ]

    def _read(self, problem: Problem) -> Finding:
        firing = self.run_now.justifications(problem)[0]
        card = self.base.rules[firing.rule]
        words = self._say(card, firing)
        node = self.tracer.add(f"finding {problem.id} {words}", "rule", words, self._premises(firing), card.source)
        amount = problem.mm if problem.mm else None
        return Finding(
            id=problem.id,
            problem=problem.name,
            title=card.title,
            place=problem.place,
            stage=_stage(problem),
            amount=amount,
            words=words,
            node=node,
            source=card.source,
        )

    def _say(self, card: Card, firing: Firing) -> str:
        if not self.told:
            return ""
        bound = dict(firing.bindings)
        bound.update({name: call(reckon, firing.bindings) for name, reckon in card.reckons.items()})
        return self.teller.say(card.says, bound)

    def _premises(self, firing: Firing) -> list[NodeId]:
        parents: list[NodeId] = []
        for fact in firing.premises:
            parents.extend(self._node_of(fact))
        return parents

    def _node_of(self, fact: SlotFact) -> list[NodeId]:
        if isinstance(fact, Problem):
            return [self._read(fact).node]
        if isinstance(fact, Offer):
            return []
        return self.tracer.fact(fact, self.model)

    def _options(self, finding: Finding) -> list[Option]:
        offers = [offer for offer in self.run_now.of(Offer) if offer.problem == finding.id]
        return [self._option(finding, offer) for offer in offers]

    def _option(self, finding: Finding, offer: Offer) -> Option:
        if offer.fix not in self.base.fixes:
            rules = [firing.rule for firing in self.run_now.justifications(offer)]
            raise KnowledgeError(f"no fix '{offer.fix}'", where=", ".join(rules), hint="see `advisor rules list`")
        fix = self.base.fixes[offer.fix]
        rulings = self._rulings(finding, offer)
        trouble = Trouble(finding.id, finding.problem, finding.place, offer.role, finding.amount or Fraction(0))
        sized = size(self.world.garment.id, offer.fix, fix, trouble, self.model, self.world.tape)
        self.reads |= sized.reads
        work = sized.work
        if sized.fault is not None:
            rulings = [*rulings, self._unsized(finding, offer, sized.fault)]
        figures = [self.tracer.figure(figure, self.model) for figure in work.figures.values()]
        answer = self.base.rules[self.run_now.justifications(offer)[0].rule]
        node = self.tracer.add(
            f"option {finding.id} {offer.fix}",
            "rule",
            f"{fix.title}: {answer.why}",
            [finding.node, *figures],
            answer.source,
        )
        return Option(
            id=f"{finding.id}>{offer.fix}",
            finding=finding.id,
            fix=offer.fix,
            title=fix.title,
            reason=answer.why,
            why=fix.why,
            wrong_when=fix.wrong_when,
            source=fix.source,
            grades=self.base.grades.grade(fix, self.model),
            cautions=fix.cautions,
            work=work,
            closes=fix.closes,
            node=node,
            rulings=tuple(rulings),
        )

    def _rulings(self, finding: Finding, offer: Offer) -> list[Ruling]:
        rulings = []
        for veto in self.run_now.of(Veto):
            if veto.problem == finding.id and veto.fix == offer.fix:
                firing = self.run_now.justifications(veto)[0]
                card = self.base.rules[veto.rule]
                words = self._say(card, firing)
                parents = [finding.node, *self._premises(firing)]
                node = self.tracer.add(
                    f"veto {finding.id} {offer.fix} {veto.rule}", "veto", words, parents, card.source
                )
                rulings.append(Ruling(veto.rule, words, node))
        return rulings

    def _unsized(self, finding: Finding, offer: Offer, fault: AdvisorError) -> Ruling:
        words = f"It cannot be worked out here: {fault.what}."
        node = self.tracer.add(f"veto {finding.id} {offer.fix} size", "veto", words, [finding.node])
        return Ruling("", words, node)

    def _take(self, here: Iterable[Finding]) -> bool:
        """Put the effects of the choices for these findings into the garment."""
        before = self.model
        for finding in here:
            option = self._chosen(finding.id)
            if option is not None:
                self._work(option)
        return self.model is not before

    def _chosen(self, finding: FindingId) -> Option | None:
        """The option taken for a finding: the one chosen, else, when filling, the first that stands."""
        options = [option for option in self.options if option.finding == finding]
        if finding in self.choices:
            return next((option for option in options if option.fix == self.choices[finding].fix), None)
        first = next((option for option in options if option.open), None)
        if not self.fill or first is None:
            return None
        self.choices[finding] = Choice(first.fix)
        self.suggested.append(finding)
        return first

    def _work(self, option: Option) -> None:
        cause = self.tracer.add(
            f"choice {option.id}", "choice", f"You choose: {option.title[:1].lower()}{option.title[1:]}", [option.node]
        )
        for op in option.work.ops:
            if op.id in self.done:
                continue
            self.done.add(op.id)
            for effect in op.effects:
                self.model = self.model.apply([effect])
                self.tracer.change(effect, self.model, cause)


def _stage(problem: Problem) -> Stage:
    stage: Stage = problem.stage  # type: ignore[assignment]  # the slot allows these words only
    return stage
