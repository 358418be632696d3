"""A pass that is only compared with others: no words, no trace, and nothing worked out twice.

Sweeps make hundreds of such passes over garments that differ in one value, and most findings have the same options
in most of them.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from types import MappingProxyType

from advisor.advise.kept import Kept, KeptByReads, Numbers
from advisor.advise.rank import rank
from advisor.advise.sizing import Sized
from advisor.advise.stages import KEPT, Job, Pass, finding_of, unsized
from advisor.core.model import Key, Model
from advisor.core.trace import Trace
from advisor.core.work import Finding, Option, Ruling
from advisor.knowledge.facts import Offer, Problem

NO_TRACE = Trace(MappingProxyType({}))


@dataclass(frozen=True)
class _Ranked:
    """The options for a finding, best first, and the keys that sizing them looked at."""

    options: tuple[Option, ...]
    reads: frozenset[Key]


_standards = Numbers(64)
_findings: Kept[Finding] = Kept(KEPT)
_ranked: KeptByReads[_Ranked] = KeptByReads(KEPT)


class Comparing(Pass):
    """One pass of a sweep. The rules' conclusions are those of a run from nothing; a test holds them equal."""

    def trace(self) -> Trace:
        return NO_TRACE

    @cached_property
    def standard(self) -> int:
        """A number for all that options depend on besides the finding and the garment as it stands."""
        return _standards.of((self.base, self.limits, self.bench))

    def worked(self, jobs: Sequence[Job]) -> Model:
        effects = [effect for _, ops in jobs for op in ops for effect in op.effects]
        return self.model.apply(effects) if effects else self.model

    def read(self, problem: Problem) -> Finding:
        rule = self.seen.rule_of(problem)
        token = (self.base, rule, problem)
        found = _findings.get(token)
        if found is None:
            found = _findings.put(token, finding_of(problem, self.base.rules[rule], "", f"finding {problem.id} "))
        return found

    def ranked(self, finding: Finding) -> Sequence[Option]:
        offers = self.seen.offers(finding.id)
        # What an option is made of, besides its finding, its grades and what sizing looks at.
        standing = tuple((offer, self.seen.rule_of(offer), self._vetoed_by(offer)) for offer in offers)
        token = (self.standard, finding.id, finding.amount, self.grading, standing)
        known = _ranked.get(token, self.values)
        if known is None:
            known = self._rank(finding, offers)
            _ranked.put(token, tuple(sorted(known.reads)), self.values, known)
        self.reads |= known.reads
        return known.options

    def _vetoed_by(self, offer: Offer) -> tuple[str, ...]:
        return tuple([veto.rule for veto in self.seen.vetoes(offer)])

    def _rank(self, finding: Finding, offers: Sequence[Offer]) -> _Ranked:
        sizes = [self.sized(finding, offer) for offer in offers]
        options = [self._plain(finding, offer, sized) for offer, sized in zip(offers, sizes, strict=True)]
        return _Ranked(tuple(rank(options, self.limits)), frozenset().union(*(sized.reads for sized in sizes)))

    def _plain(self, finding: Finding, offer: Offer, sized: Sized) -> Option:
        place = f"veto {finding.id} {offer.fix}"
        rulings = [Ruling(rule, "", f"{place} {rule}") for rule in self._vetoed_by(offer)]
        if sized.fault is not None:
            rulings.append(Ruling("", unsized(sized.fault), f"{place} size"))
        return self.option(finding, offer, sized, f"option {finding.id} {offer.fix}", rulings)
