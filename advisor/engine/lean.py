"""The engine class: experta's KnowledgeEngine with our matcher and order, and support for every fact.

Each derived fact keeps the matches that concluded it; when the last of them stops holding, the fact goes
too, and whatever rested on it. A fact that several matches support goes as well once none of them rests
on given facts: two facts that only support each other do not stay.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable
from typing import Any, ClassVar

from advisor.engine.experta_shim import Agenda, KnowledgeEngine, Rule
from advisor.engine.facts import SlotFact, validate
from advisor.engine.matcher import JoinMatcher, Match, RankOrder
from advisor.engine.network import Network
from advisor.engine.rules import RuleSpec, answered, parameters
from advisor.errors import AdvisorError, KnowledgeError

FUSE = 20_000
"""Firings of one run. A rule base of some hundred rules fires a few hundred times in a case."""
_GIVEN: list[Match | None] = [None]
"""The support of all facts when nothing is recorded. Never changed, because nothing is withdrawn then."""
_WATCHED = 200
"""The last firings before the fuse blows, which are counted to name the rules that go round."""


def experta_rule(spec: RuleSpec) -> Rule:
    """A RuleSpec as an ordinary experta rule, which experta's own loop can fire too."""
    try:
        asked = parameters(spec.action)
    except (TypeError, ValueError) as error:
        raise KnowledgeError(
            "the names its action asks for cannot be read", where=spec.id, hint="give a function or a lambda"
        ) from error

    def fire(engine: Any, **bound: Any) -> None:
        wanted = bound if asked.everything else {name: bound[name] for name in asked.named if name in bound}
        made = answered(spec.action(**wanted))
        if made:
            engine.declare(*made)

    fire.__name__ = spec.id
    rule: Rule = Rule(*spec.conditions, salience=-spec.layer)(fire)
    rule.spec = spec
    return rule


class LeanEngine(KnowledgeEngine):
    """One working memory. Subclasses carry the rules; `network` is compiled once for each of them.

    facts    each fact with its support: matches, and None for "given"
    fired    the matches that fired, in order
    revoked  ids of rules whose match ended, by the doing of later firings, in the run it fired in
    """

    __matcher__ = JoinMatcher
    __strategy__ = RankOrder
    network: ClassVar[Network | None] = None
    record: ClassVar[bool] = True

    matcher: JoinMatcher
    strategy: RankOrder

    def __init__(self) -> None:
        super().__init__()
        self._classes = self.matcher.network.classes
        self._clear()

    def reset(self, **_: Any) -> None:
        """Forget all facts. There is no InitialFact: a rule without patterns is tried at once."""
        self.matcher.reset()
        self._clear()

    def _clear(self) -> None:
        self.agenda = Agenda()
        self.facts: dict[SlotFact, list[Match | None]] = {}
        self.fired: list[Match] = []
        self.revoked: list[str] = []
        self._round = 0
        self._doubtful: list[SlotFact] = []

    def twin(self) -> LeanEngine:
        """Another engine in the same state, to be changed on its own. Only at rest, after `run`."""
        other = type(self)()
        twins = other.matcher.settle_as(self.matcher)
        other.facts = {
            fact: [None if each is None else twins[each] for each in support] for fact, support in self.facts.items()
        }
        other.fired = [twins[match] for match in self.fired if match.live]
        other._round = self._round
        return other

    def declare(self, *facts: SlotFact) -> None:  # type: ignore[override]
        """Give facts. Raises KnowledgeError for one its class does not allow."""
        self._check_kind(facts, "")
        if self._classes is not None and not self._classes.issuperset(map(type, facts)):
            self._check(facts)
        validate(facts)
        known, insert = self.facts, self.matcher.insert
        for fact in facts:
            support = known.get(fact)
            if support is None:
                known[fact] = [None]
                insert(fact)
            elif None not in support:
                support.append(None)

    def withdraw(self, *facts: SlotFact) -> None:
        """Take back given facts. Raises KnowledgeError for one that was not given."""
        for fact in facts:
            support = self.facts.get(fact)
            if support is None or None not in support:
                raise KnowledgeError(
                    f"{type(fact).__name__} to withdraw was never given", hint="withdraw given facts only"
                )
            support.remove(None)
            self._weaken(fact, support)

    def run(self, steps: float = FUSE) -> None:
        """Fire until nothing is left. Raises KnowledgeError after `steps` firings."""
        self._round += 1
        left = int(steps)
        tail: Counter[str] = Counter()
        keep = self._keep if self.record else self._keep_facts
        while (match := self._next()) is not None:
            left -= 1
            if left < _WATCHED:
                self._burn(match, left, int(steps), tail)
            match.made = self._conclude(match)
            match.round = self._round
            keep(match, match.made)

    def _keep(self, match: Match, made: tuple[SlotFact, ...]) -> None:
        self.fired.append(match)
        for fact in made:
            support = self.facts.setdefault(fact, [])
            if not support:
                self.matcher.insert(fact)
            support.append(match)

    def _keep_facts(self, _: Match, made: tuple[SlotFact, ...]) -> None:
        facts = self.facts
        for fact in made:
            known = len(facts)
            facts.setdefault(fact, _GIVEN)
            if len(facts) > known:
                self.matcher.insert(fact)

    def _conclude(self, match: Match) -> tuple[SlotFact, ...]:
        """Fire: the facts the action answers, checked."""
        branch, facts = match.branch, match.facts
        made: tuple[SlotFact, ...] = ()
        try:
            answer = branch.rule.action(
                **{name: facts[at] if slot is None else facts[at][slot] for name, at, slot in branch.asked}
            )
            made = (answer,) if isinstance(answer, SlotFact) else answered(answer)
            validate(made)
            if self._classes is not None:
                self._check(made)
        except KnowledgeError as error:
            error.where = error.where or match.branch.rule.spec.id
            raise
        except AdvisorError:
            raise
        except Exception as error:
            self._check_kind(made, match.branch.rule.spec.id)
            raise KnowledgeError(
                f"its action failed with {type(error).__name__}",
                where=match.branch.rule.spec.id,
                hint="an action must answer for every value its names can have",
            ) from error
        return made

    def _check(self, facts: Iterable[SlotFact]) -> None:
        """Refuse facts of classes that the engine does not have."""
        for fact in facts:
            if self._classes is not None and type(fact) not in self._classes:
                raise KnowledgeError(
                    f"{type(fact).__name__} is not a fact class of this engine", hint="add it to fact_classes"
                )

    @staticmethod
    def _check_kind(facts: Iterable[object], where: str) -> None:
        for fact in facts:
            if not isinstance(fact, SlotFact):
                raise KnowledgeError(f"{type(fact).__name__} is no fact", where=where, hint="give SlotFacts")

    def _next(self) -> Match | None:
        """The next match to fire, once all that lost its ground is taken back."""
        agenda, matcher = self.agenda, self.matcher
        waiting: list[Match] = agenda.activations
        # As long as nothing was filed that concerns it, the firing rule goes on to its next match.
        if waiting and not matcher.urgent and waiting[-1].branch.rule.rank == matcher.current:
            return waiting.pop()
        while True:
            added, removed = matcher.advance()
            if added or removed:
                self.strategy.update_agenda(agenda, added, removed)
                if removed and self._take_back(removed):
                    continue
            if self._doubtful and self._retract_hanging():
                continue
            last: Match | None = agenda.get_next()
            return last

    def _take_back(self, ended: Iterable[Match]) -> bool:
        """Withdraw the support of matches that ended after they fired. True if there were any."""
        any_fired = False
        for match in ended:
            if match.made is None:
                continue
            any_fired = True
            rule = match.branch.rule.spec.id
            if match.round == self._round:
                self.revoked.append(rule)
            if not self.record:
                raise KnowledgeError(
                    "its conditions stopped holding after it fired", where=rule,
                    hint="put what its NOT looks at on a lower layer, or run with record=True",
                )  # fmt: skip
            for fact in match.made:
                support = self.facts.get(fact)
                if support and match in support:
                    support[:] = [each for each in support if each is not match]
                    self._weaken(fact, support)
        return any_fired

    def _weaken(self, fact: SlotFact, support: list[Match | None]) -> None:
        """`fact` has just lost some support."""
        if not support:
            del self.facts[fact]
            self.matcher.remove(fact)
        elif None not in support:
            self._doubtful.append(fact)

    def _retract_hanging(self) -> bool:
        """Retract what no longer rests on given facts, only on itself. True if there was any."""
        reach: dict[SlotFact, None] = {}
        stack, self._doubtful = self._doubtful, []
        while stack:
            fact = stack.pop()
            if fact in self.facts and fact not in reach:
                reach[fact] = None
                for match in self.facts[fact]:
                    stack += () if match is None else match.facts
        resting = {fact for fact in reach if None in self.facts[fact]}
        open_facts = [fact for fact in reach if fact not in resting]
        while True:
            rested = [fact for fact in open_facts if self._rests(fact, resting)]
            if not rested:
                break
            resting.update(rested)
            open_facts = [fact for fact in open_facts if fact not in resting]
        for fact in open_facts:
            del self.facts[fact]
            self.matcher.remove(fact)
        return bool(open_facts)

    def _rests(self, fact: SlotFact, resting: set[SlotFact]) -> bool:
        return any(
            match is not None and all(premise in resting for premise in match.facts) for match in self.facts[fact]
        )

    def _burn(self, match: Match, left: int, steps: int, tail: Counter[str]) -> None:
        tail[match.branch.rule.spec.id] += 1
        if left < 0:
            often = ", ".join(f"{rule} ({count})" for rule, count in tail.most_common(3))
            undone = Counter(self.revoked).most_common(1)
            often += f"; taken back again and again: {undone[0][0]}" if undone else ""
            raise KnowledgeError(
                f"the rules do not come to rest: {steps} firings, the last of them {often}",
                hint="a rule must not make the facts it starts from, nor undo its own NOT",
            )
