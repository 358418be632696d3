"""An engine that keeps note of which rules fired, and that goes from one garment to the next by what differs."""

from collections.abc import Iterable, Iterator

from advisor.check.material import Material
from advisor.engine import Engine, Run, Session, SlotFact
from advisor.knowledge.facts import FACTS, Offer, Problem
from advisor.rulebase.specs import spec_of

FAR = 40  # facts that differ, from which on a fresh run is quicker


class Watching(Engine):
    """The engine of all sound rules. `told` names the world being tried.

    fired     the rules that fired on any of them
    revoked   rules that lost in one run what they had fired on, with the first world
    twice     rules that concluded the same, with the first world
    """

    def __init__(self, material: Material) -> None:
        ids = sorted(material.sound)
        super().__init__([spec_of(id, material.rules[id]) for id in ids], FACTS)
        self.told = ""
        self.fired: set[str] = set()
        self.revoked: dict[str, str] = {}
        self.twice: dict[tuple[str, ...], str] = {}
        self._session: Session | None = None
        self._given: set[SlotFact] = set()

    def run(self, facts: Iterable[SlotFact]) -> Run:
        """As any engine, from the facts of the call before: quick where little differs."""
        wanted = set(facts)
        # A session is of no more use after an exception, so it is put back only when it has come through.
        session, self._session = self._session, None
        if session is None or len(self._given ^ wanted) > max(FAR, len(wanted)):
            session = self.session(wanted)
            run = session.result()
        else:
            run = session.change(_sorted(self._given - wanted), _sorted(wanted - self._given))
        self._session, self._given = session, wanted
        return self._noted(run)

    def _noted(self, run: Run) -> Run:
        made: dict[SlotFact, set[str]] = {}
        for firing in run.firings:
            self.fired.add(firing.rule)
            for fact in firing.conclusions:
                if isinstance(fact, Problem | Offer):
                    made.setdefault(fact, set()).add(firing.rule)
        for rules in made.values():
            if len(rules) > 1:
                self.twice.setdefault(tuple(sorted(rules)), self.told)
        for rule in run.revoked:
            self.revoked.setdefault(rule, self.told)
        return run


def problems_of(run: Run) -> Iterator[Problem]:
    """The problems found in a run. `Run.of` would put all facts in order first, which takes as long as the run."""
    for firing in run.firings:
        for fact in firing.conclusions:
            if isinstance(fact, Problem):
                yield fact


def _sorted(facts: set[SlotFact]) -> list[SlotFact]:
    return sorted(facts, key=lambda fact: fact.order)
