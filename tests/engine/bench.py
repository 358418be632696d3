"""Times our engine beside CLIPS on the same synthetic rules: `python -m tests.engine.bench`.

The rules: six in ten join two patterns on a part with a range check, two in ten join three patterns, one
in ten has a NOT, one in ten starts from a fact that another rule derived. Every firing derives a fact with
a computed number. CLIPS gets the same rules as text and the same facts by clipspy's quickest public way.

    pure       CLIPS computes the number itself; no Python runs in a rule
    call-back  each firing calls a Python function with the bound values, which answers the number
    recording  the function also gets the matched facts and stores which firing made what

The columns are taken in a new order each round, in one process, and the best round counts, in processor
time, so that the ratios are fair on a busy machine. The results are compared fact by fact before anything
is timed. A case is reset, giving the facts, and running; CLIPS's time includes clipspy's calls to give them.
CLIPS always reckons in whole numbers, also beside the column in which we reckon in Fractions.

    --rounds N     rounds (default 100)
    --memory N     instead run N cases and print the memory held after each tenth of them
"""

from __future__ import annotations

import argparse
import gc
import random
import time
import tracemalloc
from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from advisor.engine import MATCH, NOT, Engine, P, RuleSpec, Slot, SlotFact

PARTS = ("waist", "hip", "hem", "cuff")
KINDS = 30


def part_classes(prefix: str, number: type) -> list[type[SlotFact]]:
    """Thirty fact classes with a part and a size."""
    return [type(f"{prefix}{n}", (SlotFact,), {"part": Slot(str), "size": Slot(number)}) for n in range(KINDS)]


class Derived(SlotFact):
    rule = Slot(str)
    part = Slot(str)
    size = Slot(int)


class Exact(SlotFact):
    rule = Slot(str)
    part = Slot(str)
    size = Slot(Fraction)


@dataclass(frozen=True)
class Outline:
    """One rule as data: its shape, the numbers of its classes, the lower bound, the rule it starts from."""

    name: str
    shape: str
    kinds: tuple[int, int, int]
    low: int
    earlier: str
    prefix: str


def outlines(count: int, prefix: str, seed: int = 7) -> list[Outline]:
    """`count` random rules on the classes called `prefix`."""
    pick = random.Random(f"{prefix}{seed}")
    shapes = pick.choices(("two", "three", "not", "chained"), (6, 2, 1, 1), k=count)
    names = [f"{prefix.lower()}{number:04}" for number in range(count)]
    twos = [name for name, shape in zip(names, shapes, strict=True) if shape == "two"]
    return [
        Outline(name, shape, tuple(pick.sample(range(KINDS), 3)), pick.randrange(20, 80), pick.choice(twos), prefix)  # type: ignore[arg-type]
        for name, shape in zip(names, shapes, strict=True)
    ]


def ours(rules: list[Outline], classes: dict[str, list[type[SlotFact]]], derived: Any) -> list[RuleSpec]:
    """The rules for our engine."""
    made = []
    for rule in rules:
        one, two, three = (classes[rule.prefix][kind] for kind in rule.kinds)
        first = one(part=MATCH.p, size=MATCH.x & P(lambda size, low=rule.low: size > low))
        second = two(part=MATCH.p, size=MATCH.y)
        conditions = {
            "two": (first, second),
            "three": (first, second, three(part=MATCH.p, size=MATCH.z)),
            "not": (first, NOT(two(part=MATCH.p))),
            "chained": (derived(rule=rule.earlier, part=MATCH.p, size=MATCH.y), first),
        }[rule.shape]
        made.append(RuleSpec(rule.name, _layer(rule), conditions, _action(rule, derived)))
    return made


def _layer(rule: Outline) -> int:
    return 2 if rule.shape == "chained" else 1


def _action(rule: Outline, derived: Any) -> Callable[..., SlotFact]:
    if rule.shape == "not":
        return lambda p, x: derived(rule=rule.name, part=p, size=x + 1)
    return lambda p, x, y: derived(rule=rule.name, part=p, size=x + y)


def clips_text(rule: Outline, mode: str) -> str:
    """One rule for CLIPS; `mode` is pure, call or record."""
    one, two, three = (f"{rule.prefix}{kind}" for kind in rule.kinds)
    first = f"?f <- ({one} (part ?p) (size ?x&:(> ?x {rule.low})))"
    second = f"?g <- ({two} (part ?p) (size ?y))"
    conditions, facts, other = {
        "two": (f"{first} {second}", "?f ?g", "?y"),
        "three": (f"{first} {second} ?h <- ({three} (part ?p) (size ?z))", "?f ?g ?h", "?y"),
        "not": (f"{first} (not ({two} (part ?p)))", "?f", "1"),
        "chained": (f"?g <- (Derived (rule {rule.earlier}) (part ?p) (size ?y)) {first}", "?g ?f", "?y"),
    }[rule.shape]
    if mode != "record":
        for name in ("?f", "?g", "?h"):
            conditions = conditions.replace(f"{name} <- ", "")
    size = {
        "pure": f"(+ ?x {other})",
        "call": f"(work ?x {other})",
        "record": f"(keep {rule.name} ?p ?x {other} {facts})",
    }[mode]
    return (
        f"(defrule {rule.name} (declare (salience -{_layer(rule)})) {conditions}"
        f" => (assert (Derived (rule {rule.name}) (part ?p) (size {size}))))"
    )


def _work(x: int, y: int) -> int:
    return x + y


class ClipsSide:
    """CLIPS with the rules loaded; one case per call."""

    def __init__(self, rules: list[Outline], prefixes: list[str], mode: str) -> None:
        import clips

        self.env = clips.Environment()
        self.records: dict[tuple[str, str, int], list[tuple[str, tuple[Any, ...]]]] = {}
        self.env.define_function(_work, name="work")
        self.env.define_function(self._keep, name="keep")
        for prefix in prefixes:
            for number in range(KINDS):
                self.env.build(f"(deftemplate {prefix}{number} (slot part) (slot size))")
        self.env.build("(deftemplate Derived (slot rule) (slot part) (slot size))")
        for rule in rules:
            self.env.build(clips_text(rule, mode))
        self._symbol = clips.Symbol

    def _keep(self, rule: str, part: str, x: int, y: int, *facts: Any) -> int:
        size = x + y
        self.records.setdefault((rule, part, size), []).append((rule, facts))
        return size

    def prepare(self, facts: list[SlotFact]) -> Callable[[], None]:
        """A case, its values turned into CLIPS's beforehand."""
        ready = [
            (
                self.env.find_template(type(fact).__name__).assert_fact,
                {k: self._symbol(v) if isinstance(v, str) else int(v) for k, v in fact.items()},
            )
            for fact in facts
        ]

        def case() -> None:
            self.records = {}
            self.env.reset()
            for declare, values in ready:
                declare(**values)
            self.env.run()

        return case

    def derived(self) -> set[tuple[str, str, int]]:
        """What the last case derived."""
        rows = (dict(fact) for fact in self.env.facts() if fact.template.name == "Derived")
        return {(str(row["rule"]), str(row["part"]), row["size"]) for row in rows}


def facts_of(classes: list[type[SlotFact]], count: int, seed: int = 3) -> list[SlotFact]:
    """`count` different facts, spread evenly over the classes."""
    pick = random.Random(seed)
    made: dict[SlotFact, None] = {}
    while len(made) < count:
        cls = classes[len(made) % len(classes)]
        made[cls(part=pick.choice(PARTS), size=pick.randrange(100))] = None
    return list(made)


def table(count: int, facts: int, rounds: int) -> None:
    """Measure and print one table."""
    rules, more = outlines(count, "Part"), outlines(count, "Other")
    plain = {"Part": part_classes("Part", int), "Other": part_classes("Other", int)}
    exact = {"Part": part_classes("Part", Fraction), "Other": part_classes("Other", Fraction)}
    case = facts_of(plain["Part"], facts)
    exact_case = [exact["Part"][plain["Part"].index(type(fact))](**fact) for fact in case]
    recording = Engine(ours(rules, plain, Derived))
    lean = Engine(ours(rules, plain, Derived), record=False)
    doubled = Engine(ours(rules + more, plain, Derived))
    in_fractions = Engine(ours(rules, exact, Exact))
    sides = {mode: ClipsSide(rules, ["Part"], mode) for mode in ("pure", "call", "record")}
    twice = ClipsSide(rules + more, ["Part", "Other"], "call")
    columns: dict[str, Callable[[], object]] = {
        "CLIPS, pure": sides["pure"].prepare(case),
        "CLIPS, call-back": sides["call"].prepare(case),
        "CLIPS, recording": sides["record"].prepare(case),
        "CLIPS, call-back, rules doubled": twice.prepare(case),
        "ours, no records": lambda: lean.run(case),
        "ours, recording": lambda: recording.run(case),
        "ours, recording, all read in order": lambda: _read(recording.run(case)),
        "ours, recording, rules doubled": lambda: doubled.run(case),
        "ours, recording, Fractions": lambda: in_fractions.run(exact_case),
    }
    for run in columns.values():
        run()
    wanted = sides["pure"].derived()
    for engine, cls, given in ((recording, Derived, case), (lean, Derived, case), (in_fractions, Exact, exact_case)):
        found = {(fact["rule"], fact["part"], fact["size"]) for fact in engine.run(given).of(cls)}
        if found != wanted or sides["record"].derived() != wanted or sides["call"].derived() != wanted:
            raise SystemExit("the engines do not agree; nothing was timed")
    times = measure(columns, rounds)
    base, call, record = times["CLIPS, pure"], times["CLIPS, call-back"], times["CLIPS, recording"]
    print(f"\n{count} rules, {facts} facts, {len(wanted)} derived; best of {rounds} rounds")
    print(f"{'':36}{'ms':>8}{'to pure':>10}{'to call-back':>14}{'to recording':>14}")
    for name, took in times.items():
        print(f"{name:36}{took * 1e3:8.2f}{took / base:10.2f}{took / call:14.2f}{took / record:14.2f}")
    print(f"doubling unrelated rules: {times['ours, recording, rules doubled'] / times['ours, recording']:.2f} x")


def _read(run: Any) -> None:
    assert run.facts and run.firings


def measure(columns: dict[str, Callable[[], object]], rounds: int) -> dict[str, float]:
    """The fewest seconds of processor time of each column."""
    taken: dict[str, list[float]] = {name: [] for name in columns}
    order, shuffle = list(columns.items()), random.Random(1).shuffle
    for _ in range(rounds):
        shuffle(order)
        for name, run in order:
            # Once untimed, so that no column pays for the caches and the rubbish of the one before it.
            run()
            gc.collect(0)
            start = time.process_time()
            run()
            taken[name].append(time.process_time() - start)
    return {name: min(each) for name, each in taken.items()}


def memory(cases: int, facts: int = 20) -> list[int]:
    """Bytes held after each tenth of `cases` different cases, all run by one engine."""
    classes = {"Part": part_classes("Part", int)}
    engine = Engine(ours(outlines(60, "Part"), classes, Derived))
    for seed in range(20):
        engine.run(facts_of(classes["Part"], facts, seed)).firings  # noqa: B018
    held = []
    tracemalloc.start()
    for tenth in range(10):
        for number in range(cases // 10):
            run = engine.run(facts_of(classes["Part"], facts, 1000 + tenth * cases + number))
            assert run.facts
            del run
        gc.collect()
        held.append(tracemalloc.get_traced_memory()[0])
    tracemalloc.stop()
    return held


def main() -> None:
    """Print the tables, or with --memory the memory held."""
    parser = argparse.ArgumentParser(description="Time the engine beside CLIPS.")
    parser.add_argument("--rounds", type=int, default=100)
    parser.add_argument("--memory", type=int, default=0)
    given = parser.parse_args()
    if given.memory:
        start = time.perf_counter()
        held = memory(given.memory)
        print(f"{given.memory} cases in {time.perf_counter() - start:.0f} s; bytes held after each tenth:")
        print(*held)
        return
    for rules, facts in ((300, 60), (600, 60), (300, 150)):
        table(rules, facts, given.rounds)


if __name__ == "__main__":
    main()
