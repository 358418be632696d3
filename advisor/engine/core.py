"""The engine as the rest of the advisor sees it: built once, one run per case."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import Any

from advisor.engine.facts import SlotFact
from advisor.engine.lean import FUSE, LeanEngine, experta_rule
from advisor.engine.network import Network
from advisor.engine.result import Run
from advisor.engine.rules import RuleSpec
from advisor.errors import KnowledgeError


class Engine:
    """All rules, checked and compiled. Each run has its own working memory, so runs may be nested or
    go on in several threads.

    rules         in any order; their order means nothing
    fact_classes  the classes rules and facts may use; None for any
    record        keep the firings; without them a run is a little faster and cannot say why
    fuse          the most firings of one run

    Raises KnowledgeError, naming the rule, for every rule that cannot work as written.
    """

    def __init__(
        self,
        rules: Sequence[RuleSpec],
        fact_classes: Sequence[type[SlotFact]] | None = None,
        *,
        record: bool = True,
        fuse: int = FUSE,
    ) -> None:
        _check_heads(rules)
        self._fuse = fuse
        sources = [experta_rule(spec) for spec in rules]
        space: dict[str, Any] = {f"rule_{number}": rule for number, rule in enumerate(sources)}
        self._network = Network(sources, fact_classes)
        space |= {"network": self._network, "record": record}
        self._class: type[LeanEngine] = type("Rules", (LeanEngine,), space)

    def run(self, facts: Iterable[SlotFact]) -> Run:
        """The facts that follow from `facts`. Raises KnowledgeError for a fact its class does not allow,
        a failing action, or rules that do not come to rest."""
        return self.session(facts).result()

    def readers(self, fact: SlotFact) -> frozenset[str]:
        """The ids of the rules that have a pattern, in a group or not, which this fact alone may meet."""
        network = self._network
        return frozenset(
            network.rules[rank].spec.id
            for node in network.find(fact)
            for rank in (*node.ranks, *node.group_ranks)
        )

    def session(self, facts: Iterable[SlotFact]) -> Session:
        """A run that can be changed afterwards."""
        session = self._session_of(self._class())
        session._change((), facts)
        return session

    def _session_of(self, engine: LeanEngine) -> Session:
        return Session(engine, self._fuse)


class Session:
    """A run whose given facts can be changed, for looking ahead.

    After any changes the result is that of a fresh run on the same given facts, as long as what NOT,
    EXISTS and FORALL look at is settled in lower layers. After an exception the session is of no more use.
    """

    def __init__(self, engine: LeanEngine, fuse: int) -> None:
        self._engine = engine
        self._fuse = fuse
        self._broken = False

    def twin(self) -> Session:
        """A session like this one, that can be changed without touching it; much quicker than another run."""
        self._refuse_broken()
        return self._like(self._engine.twin())

    def _like(self, engine: LeanEngine) -> Session:
        return Session(engine, self._fuse)

    def add(self, facts: Iterable[SlotFact]) -> Run:
        """Give more facts."""
        return self.change((), facts)

    def withdraw(self, facts: Iterable[SlotFact]) -> Run:
        """Take back given facts. Raises KnowledgeError for one that was not given."""
        return self.change(facts, ())

    def change(self, withdrawn: Iterable[SlotFact], added: Iterable[SlotFact]) -> Run:
        """Take back some given facts and give others, in one go."""
        if not self._engine.record:
            raise KnowledgeError("an engine without records cannot change a run", hint="use record=True")
        self._engine.matcher.kept = True
        self._change(withdrawn, added)
        return self.result()

    def result(self) -> Run:
        """The state as it stands; later changes do not touch it."""
        engine = self._engine
        self._refuse_broken()
        if not engine.record:
            return Run(engine.facts, (), engine.revoked)
        engine.fired = [match for match in engine.fired if match.live]
        return Run(engine.facts, engine.fired, engine.revoked)

    def _change(self, withdrawn: Iterable[SlotFact], added: Iterable[SlotFact]) -> None:
        self._refuse_broken()
        self._broken = True
        self._engine.revoked = []
        self._engine.withdraw(*withdrawn)
        self._engine.declare(*added)
        self._engine.run(self._fuse)
        self._broken = False

    def _refuse_broken(self) -> None:
        if self._broken:
            raise KnowledgeError("this run failed before", hint="start another with the same engine")


def _check_heads(rules: Sequence[RuleSpec]) -> None:
    seen: set[str] = set()
    for spec in rules:
        if not isinstance(spec, RuleSpec):
            raise KnowledgeError(f"{type(spec).__name__} is no rule", hint="give RuleSpecs")
        if not isinstance(spec.id, str) or not spec.id:
            raise KnowledgeError(f"a rule has the id {spec.id!r}", hint="an id is a word")
        if type(spec.layer) is not int:
            raise KnowledgeError("its layer is not a whole number", where=spec.id, hint="mend the layer")
        if type(spec.conditions) is not tuple:
            raise KnowledgeError("its conditions are not a tuple", where=spec.id, hint="write (..., ...)")
        if not callable(spec.action):
            raise KnowledgeError("its action cannot be called", where=spec.id, hint="give a function")
        if spec.id in seen:
            raise KnowledgeError("two rules have this id", where=spec.id, hint="rename one")
        seen.add(spec.id)
