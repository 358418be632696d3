"""A pass told in words, every value and reason with its place in the trace."""

from collections.abc import Mapping, Sequence
from dataclasses import replace

from advisor.advise.kept import Kept
from advisor.advise.rank import rank
from advisor.advise.seen import Seen
from advisor.advise.stages import Job, Pass, finding_of, unsized
from advisor.advise.tracing import Tracer
from advisor.advise.world import World
from advisor.core.case import Choice, FindingId, Limits
from advisor.core.model import Model, Place
from advisor.core.trace import Trace
from advisor.core.work import Finding, NodeId, Option, Ruling
from advisor.engine import Firing, SlotFact
from advisor.knowledge.cards import Card
from advisor.knowledge.facts import Offer, Problem
from advisor.rulebase.base import RuleBase
from advisor.rulebase.specs import call
from advisor.words import Teller

# By the identity of the places, which are kept beside the words so that no others can take it.
_said: Kept[tuple[Mapping[str, Place], str]] = Kept(2048)


class Telling(Pass):
    """One pass for a person."""

    def __init__(
        self, base: RuleBase, world: World, choices: Mapping[FindingId, Choice], limits: Limits, fill: bool
    ) -> None:
        self.teller = Teller(world.tape, world.garment.places)
        self.tracer = Tracer(world, self.teller)
        self._read_in: Seen | None = None
        self._findings: dict[Problem, Finding] = {}
        super().__init__(base, world, choices, limits, fill)

    def trace(self) -> Trace:
        return self.tracer.trace()

    def read(self, problem: Problem) -> Finding:
        if self._read_in is not self.seen:
            self._read_in, self._findings = self.seen, {}
        found = self._findings.get(problem)
        if found is None:
            found = self._findings[problem] = self._read(problem)
        return found

    def _read(self, problem: Problem) -> Finding:
        firing = self.seen.run.justifications(problem)[0]
        card = self.base.rules[firing.rule]
        words = self._say(card, firing)
        node = self.tracer.add(f"finding {problem.id} {words}", "rule", words, self._premises(firing), card.source)
        return finding_of(problem, card, words, node)

    def ranked(self, finding: Finding) -> Sequence[Option]:
        return rank([self._told(finding, offer) for offer in self.seen.offers(finding.id)], self.limits)

    def worked(self, jobs: Sequence[Job]) -> Model:
        model = self.model
        for option, ops in jobs:
            who = "Suggested" if option.finding in self.suggested else "You choose"
            title = f"{option.title[:1].lower()}{option.title[1:]}"
            cause = self.tracer.add(f"choice {option.id}", "choice", f"{who}: {title}", [option.node])
            for effect in (effect for op in ops for effect in op.effects):
                model = model.apply([effect])
                self.tracer.change(effect, model, cause)
        return model

    def _told(self, finding: Finding, offer: Offer) -> Option:
        sized = self.sized(finding, offer)
        rulings = self._rulings(finding, offer)
        if sized.fault is not None:
            words = unsized(sized.fault)
            node = self.tracer.add(f"veto {finding.id} {offer.fix} size", "veto", words, [finding.node])
            rulings.append(Ruling("", words, node))
        figures = [self.tracer.figure(figure, self.model) for figure in sized.work.figures.values()]
        answer = self.base.rules[self.seen.rule_of(offer)]
        words = f"{self.fix(offer).title}: {answer.why}"
        parents = [finding.node, *figures]
        node = self.tracer.add(f"option {finding.id} {offer.fix}", "rule", words, parents, answer.source)
        return self._on_tape(self.option(finding, offer, sized, node, rulings))

    def _on_tape(self, option: Option) -> Option:
        """The option with the amounts in its sentences told on her tape."""
        fixed = self.teller.fixed
        return replace(
            option,
            reason=fixed(option.reason),
            why=fixed(option.why),
            wrong_when=fixed(option.wrong_when),
            cautions=tuple(map(fixed, option.cautions)),
        )

    def _rulings(self, finding: Finding, offer: Offer) -> list[Ruling]:
        rulings = []
        for veto in self.seen.vetoes(offer):
            firing = self.seen.run.justifications(veto)[0]
            card = self.base.rules[veto.rule]
            words = self._say(card, firing)
            parents = [finding.node, *self._premises(firing)]
            node = self.tracer.add(f"veto {finding.id} {offer.fix} {veto.rule}", "veto", words, parents, card.source)
            rulings.append(Ruling(veto.rule, words, node))
        return rulings

    def _say(self, card: Card, firing: Firing) -> str:
        teller = self.teller
        token = (self.base, card, id(teller.places), teller.tape, tuple(firing.bindings.items()))
        known = _said.get(token)
        if known is None:
            bound = dict(firing.bindings)
            bound.update({name: call(reckon, firing.bindings) for name, reckon in card.reckons.items()})
            known = _said.put(token, (teller.places, teller.say(card.says, bound)))
        return known[1]

    def _premises(self, firing: Firing) -> list[NodeId]:
        parents: list[NodeId] = []
        for fact in firing.premises:
            parents.extend(self._node_of(fact))
        return parents

    def _node_of(self, fact: SlotFact) -> list[NodeId]:
        if isinstance(fact, Problem):
            return [self.read(fact).node]
        if isinstance(fact, Offer):
            return []
        return self.tracer.fact(fact, self.model)
