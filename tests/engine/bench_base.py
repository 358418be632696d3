"""Times our own rule base beside CLIPS on the worlds of cases/: `PYTHONPATH=. python -m tests.engine.bench_base`
(about a minute).

Each rule of the base is translated to CLIPS: patterns with their literals and names as they are; a predicate of
a slot, and a condition on several values, as a call of the same Python function. CLIPS holds words as strings and
an exact length as its number in a table, so that equal lengths are equal numbers. A case is everything from the
facts of a garment to what follows from them, once, before any work is chosen.

    call-back  each firing calls a Python function with the bound values: what the rule's action is to us. It
               answers the amount of a problem; the rest of the conclusion CLIPS puts together itself
    recording  the function also gets the matched facts and stores which firing made what

CLIPS's facts are turned into its own values beforehand; giving them, by clipspy's quickest way, is in its time,
as making our list of facts is not in ours. What both conclude is compared world by world before anything is timed.
The columns are taken in a new order each round, in one process, and the best round counts, in processor time.

We remember what a condition answered for the same values, and where a fact belongs. "Nothing remembered" forgets
both before each round; it is the harder and the fairer column for a first look at a garment, the other for a sweep.

Below the table: what doubling the rule base by rules for parts that no garment has costs; how many rules are called
in a world, that is, have a fact for each of their patterns and are joined, and whether any of them speaks of a part
the garment lacks. The memory held over many calls of `advise` is looked at by `bench_memory`.

    --rounds N     rounds (default 8)
    --worlds N     worlds beside the cases' own, one answer away (default 10)
"""

from __future__ import annotations

import argparse
import gc
import os
import random
import time
from collections.abc import Callable, Iterable, Iterator
from fractions import Fraction
from pathlib import Path
from typing import Any

from advisor.advise.adapter import facts_of
from advisor.advise.sweep import grid
from advisor.advise.world import world_of
from advisor.casefile import read_case
from advisor.engine import Engine, SlotFact
from advisor.engine.experta_shim import ORFC, L
from advisor.engine.network import Network
from advisor.engine.shape import FieldTest, Item, Pattern, Reader, Test
from advisor.knowledge.cards import Card, Find
from advisor.knowledge.facts import FACTS, Offer, Problem, Veto
from advisor.lengths import TAPES
from advisor.rulebase.base import RuleBase, the_base
from advisor.rulebase.specs import spec_of
from tests.engine.bench_unrelated import names_a_word, unrelated

CASES = Path(__file__).parents[2] / "cases"
MADE = (Problem, Offer, Veto)
NOTHING = Fraction(0)


class Values:
    """Our values as CLIPS holds them, and back."""

    def __init__(self) -> None:
        self._numbers: dict[Fraction, int] = {}
        self._lengths: list[Fraction] = []

    def there(self, value: Any) -> Any:
        """A word as it is, a length as its number."""
        if not isinstance(value, Fraction):
            return value
        number = self._numbers.get(value)
        if number is None:
            number = self._numbers[value] = len(self._lengths)
            self._lengths.append(value)
        return number

    def back(self, value: Any) -> Any:
        """The value of ours."""
        return self._lengths[value] if isinstance(value, int) else str(value)


class ClipsSide:
    """CLIPS with the rule base loaded; `run` is one case."""

    def __init__(self, base: RuleBase, *, recording: bool) -> None:
        import clips

        self.env = clips.Environment()
        self.values = Values()
        self.recording = recording
        self.records: dict[Any, list[tuple[str, tuple[Any, ...]]]] = {}
        self._functions = 0
        for cls in FACTS:
            self.env.build(f"(deftemplate {cls.__name__} {' '.join(f'(slot {slot})' for slot in cls.slot_names)})")
        for id in sorted(base.rules):
            self._rule(id, base.rules[id])

    def prepare(self, facts: Iterable[SlotFact]) -> Callable[[], None]:
        """A case, its values turned into CLIPS's beforehand."""
        ready = [
            (
                self.env.find_template(type(fact).__name__).assert_fact,
                {slot: self.values.there(value) for slot, value in fact.items()},
            )
            for fact in facts
        ]

        def case() -> None:
            self.records = {}
            self.env.reset()
            for give, values in ready:
                give(**values)
            self.env.run()

        return case

    def concluded(self) -> set[SlotFact]:
        """What the last case concluded."""
        by_name = {cls.__name__: cls for cls in MADE}
        found = set()
        for fact in self.env.facts():
            cls = by_name.get(fact.template.name)
            if cls is not None:
                found.add(cls(**{slot: self.values.back(value) for slot, value in dict(fact).items()}))
        return found

    def _rule(self, id: str, card: Card) -> None:
        spec = spec_of(id, card)
        for number, shape in enumerate(Reader(id).branches(spec.conditions)):
            writer = _Writer(self)
            conditions = " ".join(writer.item(item, top=True) for _, item in shape)
            act = self._act(id, card, writer)
            self.env.build(f"(defrule {id}.{number} (declare (salience {-spec.layer})) {conditions} => {act})")

    def _act(self, id: str, card: Card, writer: _Writer) -> str:
        names = sorted(writer.bound)
        facts = " ".join(writer.facts) if self.recording else ""
        call = self.function(self._action(id, card, names))
        value = f"({call} {' '.join(f'?{name}' for name in names)} {facts})"
        role = f'"{_role(card)}"' if _role(card) else "?role"
        match spec_of(id, card).layer:
            case 1:
                assert isinstance(card, Find)
                problem = f'(id (str-cat "{card.problem}@" ?place)) (name "{card.problem}") (stage "{card.stage}")'
                return f"(assert (Problem {problem} (place ?place) (role {role}) (mm {value})))"
            case 2:
                offer = f'(problem ?problem) (name "{card.problem}") (place ?place) (role {role})'  # type: ignore[attr-defined]
                return f"(assert (Offer {offer} (fix {value})))"
        return f'(assert (Veto (problem ?problem) (rule "{id}") (fix {value})))'

    def _action(self, id: str, card: Card, names: list[str]) -> Callable[..., Any]:
        """What a firing calls: it answers the amount of a problem, or the fix that is offered or ruled out."""
        action, values, slot = spec_of(id, card).action, self.values, "mm" if isinstance(card, Find) else "fix"
        width = len(names)

        def act(*given: Any) -> Any:
            made = action(**dict(zip(names, map(values.back, given[:width]), strict=True)))
            assert isinstance(made, SlotFact)
            if self.recording:
                self.records.setdefault(made, []).append((id, given[width:]))
            return values.there(made[slot])

        return act

    def function(self, function: Callable[..., Any]) -> str:
        """A Python function made known to CLIPS; its name there."""
        self._functions += 1
        name = f"python-{self._functions}"
        self.env.define_function(function, name=name)
        return name


def _role(card: Card) -> str:
    from advisor.rulebase.specs import literal_role

    if not isinstance(card, Find):
        return getattr(card, "role", "")
    patterns = [c.element for c in card.conditions() if isinstance(c.element, SlotFact)]
    bound = any(pattern.get("role") is not None and not isinstance(pattern.get("role"), str) for pattern in patterns)
    return "" if bound else literal_role(card)


class _Writer:
    """Writes the conditions of one rule; keeps which names and facts are bound outside of groups."""

    def __init__(self, side: ClipsSide) -> None:
        self.side = side
        self.bound: set[str] = set()
        self.facts: list[str] = []
        self._own = 0

    def item(self, item: Item, top: bool = False) -> str:
        if isinstance(item, Pattern):
            return self._pattern(item, top)
        if isinstance(item, Test):
            return f"(test ({self._test(item)} {' '.join(f'?{name}' for name in item.names)}))"
        ways = [self._way(way) for way in item.ways]
        if item.negated:
            return " ".join(f"(not {way})" for way in ways)
        return f"(exists {ways[0]})" if len(ways) == 1 else f"(exists (or {' '.join(ways)}))"

    def _way(self, way: tuple[Item, ...]) -> str:
        parts = [self.item(part) for part in way]
        return parts[0] if len(parts) == 1 else f"(and {' '.join(parts)})"

    def _test(self, test: Test) -> str:
        function, names, back = test.function, test.names, self.side.values.back

        def check(*given: Any) -> bool:
            return bool(function(**dict(zip(names, map(back, given), strict=True))))

        return self.side.function(check)

    def _pattern(self, pattern: Pattern, top: bool) -> str:
        parts: dict[str, list[str]] = {}
        for slot, literal in pattern.literals:
            parts.setdefault(slot, []).append(_quoted(self.side.values.there(literal)))
        for slot, name in pattern.names:
            parts.setdefault(slot, []).append(f"?{name}")
            if top:
                self.bound.add(name)
        for slot, name in pattern.differs:
            parts.setdefault(slot, []).append(f"~?{name}")
        for test in pattern.tests:
            parts.setdefault(test.slot, []).append(self._field(test, dict(pattern.names).get(test.slot)))
        slots = " ".join(f"({slot} {'&'.join(each)})" for slot, each in parts.items())
        text = f"({pattern.cls.__name__} {slots})"
        if not (top and self.side.recording):
            return text
        self.facts.append(f"?fact{len(self.facts)}")
        return f"{self.facts[-1]} <- {text}"

    def _field(self, test: FieldTest, name: str | None) -> str:
        self._own += 1
        variable = f"?{name}" if name else f"?own{self._own}"
        lead = "" if name else f"{variable}&"
        if isinstance(test.source, ORFC) and all(isinstance(part, L) for part in test.source):
            each = " ".join(f"(eq {variable} {_quoted(self.side.values.there(part.value))})" for part in test.source)
            return f"{lead}:(or {each} FALSE)"
        passes, back = test.passes, self.side.values.back
        return f"{lead}:({self.side.function(lambda value: bool(passes(back(value))))} {variable})"


def _quoted(value: Any) -> str:
    return str(value) if isinstance(value, int) else f'"{value}"'


def worlds(base: RuleBase, more: int, seed: int = 1) -> Iterator[list[SlotFact]]:
    """The facts of the worlds of cases/, and of `more` that differ from one of them in one answer."""
    pick = random.Random(seed)
    cases = [read_case(path, base.questions()).case for path in sorted(CASES.glob("*.toml"))]
    for case in cases:
        yield list(facts_of(world_of(case, base.garment(case.garment)).model, base.read))
    for _ in range(more):
        case = pick.choice(cases)
        questions = base.garment(case.garment).questions
        key = pick.choice(sorted(questions))
        world = world_of(case, base.garment(case.garment), {key: pick.choice(grid(questions[key], TAPES[case.tape]))})
        yield list(facts_of(world.model, base.read))


def forget(engine: Engine) -> None:
    """Make the engine forget what conditions answered and where facts belong."""
    network: Network = engine._class.network  # type: ignore[attr-defined]
    network._met.clear()
    for branch in network.branches:
        for ask in branch._planner._askers.values():
            getattr(ask, "cache_clear", lambda: None)()


def agree(base: RuleBase, cases: list[list[SlotFact]], engines: Iterable[Engine], sides: Iterable[ClipsSide]) -> int:
    """Compare all conclusions, world by world; how many there are. SystemExit at the first that differ."""
    count = 0
    for number, facts in enumerate(cases):
        found = [{fact for cls in MADE for fact in engine.run(facts).of(cls)} for engine in engines]
        for side in sides:
            side.prepare(facts)()
            found.append(side.concluded())
        if any(each != found[0] for each in found):
            odd = sorted({str(fact) for each in found for fact in each ^ found[0]})
            raise SystemExit(f"world {number}: the engines do not agree; nothing was timed\n" + "\n".join(odd[:10]))
        count += len(found[0])
    return count


def measure(columns: dict[str, tuple[Callable[[], object], Callable[[], object]]], rounds: int) -> dict[str, float]:
    """The fewest seconds of processor time of each column; the first function of a column is not timed."""
    taken: dict[str, list[float]] = {name: [] for name in columns}
    order, shuffle = list(columns.items()), random.Random(1).shuffle
    for _ in range(rounds):
        shuffle(order)
        for name, (before, run) in order:
            # Once untimed, so that no column pays for the caches and the rubbish of the one before it.
            run()
            before()
            gc.collect(0)
            start = time.process_time()
            run()
            taken[name].append(time.process_time() - start)
    return {name: min(each) for name, each in taken.items()}


def table(rounds: int, more: int) -> None:
    """Measure and print."""
    base = the_base()
    specs = [spec_of(id, base.rules[id]) for id in sorted(base.rules)]
    cases = list(worlds(base, more))
    recording, lean = Engine(specs, FACTS), Engine(specs, FACTS, record=False)
    doubled = Engine([*specs, *map(unrelated, filter(names_a_word, specs))], FACTS)
    calling, keeping = ClipsSide(base, recording=False), ClipsSide(base, recording=True)
    concluded = agree(base, cases, (recording, lean, doubled), (calling, keeping))
    there = {name: [side.prepare(facts) for facts in cases] for name, side in (("call", calling), ("keep", keeping))}

    def nothing() -> None:
        return None

    def all_of(engine: Engine) -> Callable[[], object]:
        return lambda: [engine.run(facts) for facts in cases]

    def each(name: str) -> Callable[[], object]:
        return lambda: [case() for case in there[name]]

    def read() -> object:
        return [run.firings for run in map(recording.run, cases)]

    columns: dict[str, tuple[Callable[[], object], Callable[[], object]]] = {
        "CLIPS, call-back": (nothing, each("call")),
        "CLIPS, recording": (nothing, each("keep")),
        "ours, no records": (nothing, all_of(lean)),
        "ours, no records, nothing remembered": (lambda: forget(lean), all_of(lean)),
        "ours, recording": (nothing, all_of(recording)),
        "ours, recording, nothing remembered": (lambda: forget(recording), all_of(recording)),
        "ours, recording, all read in order": (nothing, read),
        "ours, recording, rules doubled": (nothing, all_of(doubled)),
    }
    times = measure(columns, rounds)
    facts = sum(map(len, cases)) / len(cases)
    print(f"\n{len(specs)} rules, {len(cases)} worlds of {facts:.0f} facts, {concluded} conclusions, 0 mismatches")
    print(f"best of {rounds} rounds; load average {os.getloadavg()[0]:.1f}; milliseconds for one world")
    print(f"{'':38}{'ms':>8}{'to call-back':>14}{'to recording':>14}")
    for name, took in times.items():
        to_call, to_keep = took / times["CLIPS, call-back"], took / times["CLIPS, recording"]
        print(f"{name:38}{took / len(cases) * 1e3:8.2f}{to_call:14.2f}{to_keep:14.2f}")
    print(f"unrelated rules doubled: {times['ours, recording, rules doubled'] / times['ours, recording']:.2f} x")
    reach(base, recording, doubled, cases)


def called(engine: Engine, facts: list[SlotFact]) -> set[str]:
    """The rules that have a fact for each of their patterns at the end of a run, or that have none to ask for."""
    session = engine.session(facts)
    matcher = session._engine.matcher
    return {rule.spec.id for rule in matcher.network.rules if all(matcher._memory[node] for node in rule.needs)}


def roles_of(card: Card) -> set[str]:
    """The roles that a card's positive patterns name."""
    patterns = (condition.element for condition in card.conditions() if isinstance(condition.element, SlotFact))
    named = {pattern.get(slot) for pattern in patterns for slot in ("role", "other_role")}
    return {role for role in named if isinstance(role, str)}


def reach(base: RuleBase, engine: Engine, doubled: Engine, cases: list[list[SlotFact]]) -> None:
    """Print how many rules are called, and by whom else but the garment's own roles. SystemExit if there are any."""
    counts, reachable = [], []
    for facts in cases:
        roles = {fact.get(slot) for fact in facts for slot in ("role", "other_role")}
        within = {id for id, card in base.rules.items() if roles_of(card) <= roles}
        here = called(engine, facts)
        if not here <= within or called(doubled, facts) != here:
            raise SystemExit(f"rules were called for parts the garment lacks: {sorted(here - within)[:5]}")
        counts.append(len(here))
        reachable.append(len(within))
    mean, most = sum(counts) / len(counts), max(counts)
    print(f"rules called in a world: {mean:.0f} on the average, {most} at most, of {len(base.rules)} rules;")
    print(f"    the garment's roles can reach {min(reachable)} to {max(reachable)}; called beyond these: 0,")
    print("    with the unrelated rules too: 0")


def main() -> None:
    """Print the table and the counts."""
    parser = argparse.ArgumentParser(description="Time the engine beside CLIPS on our own rules.")
    parser.add_argument("--rounds", type=int, default=8)
    parser.add_argument("--worlds", type=int, default=10)
    given = parser.parse_args()
    table(given.rounds, given.worlds)


if __name__ == "__main__":
    main()
