"""An engine that keeps note of which rules fired, and that goes from one garment to the next by what differs."""

from collections.abc import Iterable, Iterator, Mapping
from dataclasses import dataclass, field
from typing import Any

from advisor.advise.adapter import Picture
from advisor.check.material import Material
from advisor.core.model import Model
from advisor.engine import Engine, Run, Session, SlotFact
from advisor.knowledge.cards import Card
from advisor.knowledge.facts import FACTS, Offer, Problem
from advisor.rulebase.reads import RoleSlot
from advisor.rulebase.specs import call, spec_of


@dataclass
class Noted:
    """What was seen in all runs. `told` names the world being tried; `rules` are all cards by id.

    fired     the rules that fired on any of them
    revoked   rules that lost in one run what they had fired on, with the first world
    twice     rules that concluded the same, with the first world
    """

    rules: Mapping[str, Card]
    told: str = ""
    fired: set[str] = field(default_factory=set)
    revoked: dict[str, str] = field(default_factory=dict)
    twice: dict[tuple[str, ...], str] = field(default_factory=dict)

    def note(self, run: Run) -> Run:
        """Write down one run. What a card reckons for its sentence is reckoned; the author's function may raise."""
        made: dict[SlotFact, set[str]] = {}
        for firing in run.firings:
            self.fired.add(firing.rule)
            for reckon in self.rules[firing.rule].reckons.values():
                call(reckon, firing.bindings)
            for fact in firing.conclusions:
                if isinstance(fact, Problem | Offer):
                    made.setdefault(fact, set()).add(firing.rule)
        for rules in made.values():
            if len(rules) > 1:
                self.twice.setdefault(tuple(sorted(rules)), self.told)
        for rule in run.revoked:
            self.revoked.setdefault(rule, self.told)
        return run


class Watched(Session):
    """A run whose every result is noted."""

    def __init__(self, noted: Noted, engine: Any, fuse: int) -> None:
        super().__init__(engine, fuse)
        self.noted = noted

    def _like(self, engine: Any) -> Session:
        return Watched(self.noted, engine, self._fuse)

    def result(self) -> Run:
        """As in any session."""
        return self.noted.note(super().result())


class Watching(Engine):
    """An engine of these rules in this order, whose runs are noted."""

    def __init__(self, material: Material, noted: Noted, ids: Iterable[str]) -> None:
        super().__init__([spec_of(id, material.rules[id]) for id in ids], FACTS)
        self.noted = noted
        self._seen: tuple[Picture, Session] | None = None

    def _session_of(self, engine: Any) -> Session:
        return Watched(self.noted, engine, self._fuse)

    def see(self, model: Model, read: frozenset[RoleSlot]) -> Run:
        """What follows from a garment, from the run on the garment seen before: quick where little differs."""
        # A session is of no more use after an exception, so it is put back only when it has come through.
        seen, self._seen = self._seen, None
        if seen is None:
            picture = Picture(read)
            picture.turn(model)
            session = self.session(_sorted(picture.facts))
            run = session.result()
        else:
            picture, session = seen
            gone, come = picture.turn(model)
            run = session.change(_sorted(gone), _sorted(come))
        self._seen = picture, session
        return run


def problems_of(run: Run) -> Iterator[Problem]:
    """The problems found in a run. `Run.of` would put all facts in order first, which takes as long as the run."""
    for firing in run.firings:
        for fact in firing.conclusions:
            if isinstance(fact, Problem):
                yield fact


def _sorted(facts: Iterable[SlotFact]) -> list[SlotFact]:
    return sorted(facts, key=lambda fact: fact.order)
