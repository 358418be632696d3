"""Replaying a record: the plan as it was printed held against the plan the case gives now, and what lies behind."""

from collections.abc import Iterator
from dataclasses import dataclass

from advisor.advise.differences import Difference
from advisor.advise.record import record_of
from advisor.core.advice import Plan
from advisor.core.case import Case, Record
from advisor.knowledge.cards import Answer, Find, Veto
from advisor.rulebase.base import RuleBase
from advisor.rulebase.digests import base_digest, card_digests


@dataclass(frozen=True)
class Behind:
    """What changed since a plan was put on record.

    `changed`: files of the rule base that had a say and say something else now; `gone`: those that are no more;
    `speaks`: cards that had no say, and have one now of themselves. `others`: files without a say are not the same.
    """

    changed: tuple[str, ...] = ()
    gone: tuple[str, ...] = ()
    speaks: tuple[str, ...] = ()
    others: bool = False
    formulas: bool = False
    operations: bool = False
    answers: bool = False
    versions: tuple[str, str] | None = None

    @property
    def anything(self) -> bool:
        """Whether anything changed at all."""
        return self != Behind()


@dataclass(frozen=True)
class Replayed:
    """The plan on record and the plan now. `same`: the advice is the same in every part."""

    then: Record
    now: Record
    behind: Behind

    @property
    def same(self) -> bool:
        """Whether the advice is the same in every part, all numbers with it."""
        return self.then.advice == self.now.advice

    @property
    def difference(self) -> Difference:
        """What differs."""
        return Difference(self.then, self.now)


def replayed(base: RuleBase, case: Case, then: Record, plan: Plan) -> Replayed:
    """`then` held against `plan`, which `case` gives now."""
    now = record_of(base, case, plan, then.at)
    here = card_digests(base, then.cards)
    others = then.others != base_digest(base, but=then.cards)
    behind = Behind(
        changed=tuple(id for id in sorted(then.cards) if id in here and here[id] != then.cards[id]),
        gone=tuple(id for id in sorted(then.cards) if id not in here),
        speaks=tuple(_speaks(base, then, now)) if others else (),
        others=others,
        formulas=then.formulas != now.formulas,
        operations=then.operations != now.operations,
        answers=then.answers != now.answers,
        versions=None if then.advisor == now.advisor else (then.advisor, now.advisor),
    )
    return Replayed(then, now, behind)


def _speaks(base: RuleBase, then: Record, now: Record) -> Iterator[str]:
    """The cards with a say only now, apart from those that answer or rule out what was not there to be spoken of."""
    problems = {id.partition("@")[0] for id in then.findings}
    fixes = {fix for each in then.findings.values() for fix in (*each.stood, *each.out)}
    for id in sorted(set(now.cards) - set(then.cards)):
        card = base.rules.get(id)
        if isinstance(card, Find):
            yield id
        if isinstance(card, Answer) and card.problem in problems:
            yield id
        if isinstance(card, Veto) and (not card.fixes or not fixes.isdisjoint(card.fixes)):
            yield id

