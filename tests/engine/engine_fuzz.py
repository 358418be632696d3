"""Random rule sets, written once as plain data and rendered for our engine, for stock experta and for CLIPS.

A rule set is stratified: what NOT, EXISTS and FORALL look at is derived in lower layers only, so its
facts do not depend on the order of firing and all engines must agree.
"""

from __future__ import annotations

import random
from collections import Counter
from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

from advisor.engine import AND, EXISTS, FORALL, MATCH, NOT, OR, TEST, L, P, RuleSpec, Slot, SlotFact

WORDS = {"k": ("a", "b", "c", "d"), "g": ("x", "y")}
TOP = 5
LAYERS = (1, 2, 3)


class A(SlotFact):
    k = Slot(str, words=WORDS["k"])
    g = Slot(str, words=WORDS["g"])
    n = Slot(int)


class B(SlotFact):
    k = Slot(str)
    g = Slot(str)
    n = Slot(int)


class C(SlotFact):
    k = Slot(str)
    g = Slot(str)
    n = Slot(int)


class D1(SlotFact):
    k = Slot(str)
    g = Slot(str)
    n = Slot(int)


class D2(SlotFact):
    k = Slot(str)
    g = Slot(str)
    n = Slot(int)


class D3(SlotFact):
    k = Slot(str)
    g = Slot(str)
    n = Slot(int)


CLASSES: dict[str, type[SlotFact]] = {cls.__name__: cls for cls in (A, B, C, D1, D2, D3)}
GIVEN = ("A", "B", "C")
MADE = {1: "D1", 2: "D2", 3: "D3"}


@dataclass
class Cond:
    """kind pat: cls and slots; test: slots["op"], ["x"], ["y"]; not, exists, forall, or: parts."""

    kind: str
    cls: str = ""
    slots: dict[str, Any] = field(default_factory=dict)
    parts: list[Cond] = field(default_factory=list)


@dataclass
class RuleData:
    name: str
    layer: int
    conds: list[Cond]
    makes: str
    slots: dict[str, Any]


class Maker:
    """Makes random rules. `plain` leaves out what stock experta gets wrong by design."""

    def __init__(self, seed: object, plain: bool = False) -> None:
        self.random = random.Random(f"{seed}")
        self.plain = plain
        self.names = 0

    def rule_set(self, count: int) -> list[RuleData]:
        return [self.rule(f"r{number:02}", self.random.choice(LAYERS)) for number in range(count)]

    def facts(self, count: int) -> list[SlotFact]:
        pick = self.random.choice
        made = {
            CLASSES[pick(GIVEN)](k=pick(WORDS["k"]), g=pick(WORDS["g"]), n=self.random.randrange(TOP))
            for _ in range(count)
        }
        return sorted(made, key=lambda fact: fact.order)

    def rule(self, name: str, layer: int) -> RuleData:
        chance = self.random.random
        bound: dict[str, str] = {}
        below = [*GIVEN, *(MADE[low] for low in LAYERS if low < layer)]
        conds: list[Cond] = []
        patterns = 0 if not self.plain and chance() < 0.05 else self.random.choice((1, 2, 2, 2, 3))
        for _ in range(patterns):
            source = [*below, MADE[layer]] if chance() < 0.3 else below
            conds.append(self.pattern(source, bound, new=True))
            if chance() < 0.3 and (test := self.test(bound)):
                conds.append(test)
        if not self.plain and chance() < 0.12:
            conds.append(Cond("or", parts=[self.pattern(below, dict(bound), new=False) for _ in range(2)]))
        for _ in range(self.random.choice((0, 0, 1, 1, 2))):
            conds.append(self.group(below, bound, deep=True))
        return RuleData(name, layer, conds, MADE[layer], self.conclusion(bound))

    def group(self, classes: list[str], bound: dict[str, str], deep: bool) -> Cond:
        kind = "not" if self.plain else self.random.choice(("not", "not", "not", "exists", "exists", "forall"))
        local = dict(bound)
        if self.plain:
            return Cond("not", parts=[self.pattern(classes, local, new=False)])
        count = 2 if kind == "forall" else self.random.choice((1, 1, 1, 2))
        parts = [self.pattern(classes, local, new=True) for _ in range(count)]
        if kind != "forall" and self.random.random() < 0.3 and (test := self.test(local)):
            parts.append(test)
        if kind == "not" and deep and self.random.random() < 0.25:
            parts.append(self.group(classes, local, deep=False))
        return Cond(kind, parts=parts)

    def pattern(self, classes: list[str], bound: dict[str, str], new: bool) -> Cond:
        slots: dict[str, Any] = {}
        before = dict(bound)
        for slot in ("k", "g", "n"):
            constraint = self.constraint(slot, before, bound, new)
            if constraint:
                slots[slot] = constraint
        return Cond("pat", self.random.choice(classes), slots)

    def constraint(self, slot: str, before: dict[str, str], bound: dict[str, str], new: bool) -> Any:
        pick, chance = self.random.choice, self.random.random
        roll = chance()
        if roll < 0.3:
            return None
        same = [name for name, kind in before.items() if kind == slot]
        if roll < 0.42:
            return ("lit", self.literal(slot))
        if roll < 0.47 and same:
            return ("differs", pick(same))
        name = None
        if chance() < 0.75:
            if same and (not new or chance() < 0.6):
                name = pick(same)
            elif new:
                self.names += 1
                name = f"v{self.names}"
                bound[name] = slot
        if slot == "n" and roll < 0.75:
            return ("pred", pick((">", "<", "!=")), self.random.randrange(TOP), name, self.own())
        if slot == "k" and roll < 0.6 and not self.plain:
            return ("alt", *self.random.sample(WORDS["k"], 2), name, self.own())
        return ("name", name) if name else None

    def own(self) -> str:
        """A variable for CLIPS, which can test a slot only by a name; no other pattern may share it."""
        self.names += 1
        return f"own{self.names}"

    def test(self, bound: dict[str, str]) -> Cond | None:
        numbers = [name for name, slot in bound.items() if slot == "n"]
        words = [name for name, slot in bound.items() if slot == "k"]
        pool = self.random.choice([numbers, words])
        if len(pool) < 2:
            return None
        one, two = self.random.sample(pool, 2)
        ops = ("<", ">", "!=") if pool is numbers else ("==", "!=")
        return Cond("test", slots={"op": self.random.choice(ops), "x": one, "y": two})

    def conclusion(self, bound: dict[str, str]) -> dict[str, Any]:
        made: dict[str, Any] = {}
        for slot in ("k", "g", "n"):
            names = [name for name, kind in bound.items() if kind == slot]
            if slot == "n" and len(names) > 1 and self.random.random() < 0.4:
                made[slot] = ("sum", *self.random.sample(names, 2))
            elif names and self.random.random() < 0.8:
                made[slot] = ("name", self.random.choice(names))
            else:
                made[slot] = ("lit", self.literal(slot))
        return made

    def literal(self, slot: str) -> Any:
        return self.random.randrange(TOP) if slot == "n" else self.random.choice(WORDS[slot])


OPS: dict[str, Callable[[Any, Any], bool]] = {
    ">": lambda a, b: a > b,
    "<": lambda a, b: a < b,
    "!=": lambda a, b: a != b,
    "==": lambda a, b: a == b,
}


def spec(rule: RuleData) -> RuleSpec:
    """The rule for our engine, and for experta's."""
    names = sorted({part for made in rule.slots.values() if made[0] != "lit" for part in made[1:]})
    values = {
        slot: repr(made[1]) if made[0] == "lit" else made[1] if made[0] == "name" else
        f"({made[1]} + {made[2]}) % {TOP}"
        for slot, made in rule.slots.items()
    }  # fmt: skip
    body = ", ".join(f"{slot}={value}" for slot, value in values.items())
    action = eval(f"lambda {', '.join(names)}: cls({body})", {"cls": CLASSES[rule.makes]})
    return RuleSpec(rule.name, rule.layer, tuple(_element(cond) for cond in rule.conds), action)


def _element(cond: Cond) -> Any:
    match cond.kind:
        case "pat":
            return CLASSES[cond.cls](**{slot: _constraint(value) for slot, value in cond.slots.items()})
        case "test":
            one, two = cond.slots["x"], cond.slots["y"]
            return TEST(eval(f"lambda {one}, {two}: op({one}, {two})", {"op": OPS[cond.slots["op"]]}))
    element = {"not": NOT, "exists": EXISTS, "forall": FORALL, "or": OR, "and": AND}[cond.kind]
    return element(*(_element(part) for part in cond.parts))


def _constraint(value: tuple[Any, ...]) -> Any:
    match value[0]:
        case "lit":
            return value[1]
        case "name":
            return getattr(MATCH, value[1])
        case "differs":
            return ~getattr(MATCH, value[1])
        case "pred":
            _, op, bound, name, _ = value
            test: Any = P(lambda seen: OPS[op](seen, bound))
        case _:
            _, one, two, name, _ = value
            test = L(one) | L(two)
    return test if name is None else getattr(MATCH, name) & test


def clips_text(rule: RuleData, logical: bool = True) -> str:
    """The rule for CLIPS; it calls (note <rule>) at each firing."""
    conds = " ".join(_clips(cond) for cond in rule.conds)
    if logical and conds:
        conds = f"(logical {conds})"
    values = {
        slot: str(made[1]) if made[0] == "lit" else f"?{made[1]}" if made[0] == "name" else
        f"(mod (+ ?{made[1]} ?{made[2]}) {TOP})"
        for slot, made in rule.slots.items()
    }  # fmt: skip
    body = " ".join(f"({slot} {value})" for slot, value in values.items())
    return (
        f"(defrule {rule.name} (declare (salience {-rule.layer})) {conds} "
        f"=> (note {rule.name}) (assert ({rule.makes} {body})))"
    )


def _clips(cond: Cond) -> str:
    match cond.kind:
        case "pat":
            slots = " ".join(f"({slot} {_clips_slot(value)})" for slot, value in cond.slots.items())
            return f"({cond.cls} {slots})"
        case "test":
            op = {"==": "eq", "!=": "neq"}.get(cond.slots["op"], cond.slots["op"])
            return f"(test ({op} ?{cond.slots['x']} ?{cond.slots['y']}))"
    parts = " ".join(_clips(part) for part in cond.parts)
    return f"(not (and {parts}))" if cond.kind == "not" and len(cond.parts) > 1 else f"({cond.kind} {parts})"


def _clips_slot(value: tuple[Any, ...]) -> str:
    match value[0]:
        case "lit":
            return str(value[1])
        case "name":
            return f"?{value[1]}"
        case "differs":
            return f"~?{value[1]}"
        case "pred":
            name = value[3] or value[4]
            return f"?{name}&:({value[1].replace('!=', '<>')} ?{name} {value[2]})"
    name = value[3] or value[4]
    return f"?{name}&:(or (eq ?{name} {value[1]}) (eq ?{name} {value[2]}))"


class Clips:
    """CLIPS 6.4 through clipspy, loaded with rules; one run per call."""

    def __init__(self, rules: list[RuleData]) -> None:
        import clips

        self._symbol = clips.Symbol
        self.env = clips.Environment()
        self.fired: Counter[str] = Counter()

        def note(rule: Any) -> None:
            self.fired[str(rule)] += 1

        self.env.define_function(note)
        for name in CLASSES:
            self.env.build(f"(deftemplate {name} (slot k) (slot g) (slot n))")
        for rule in rules:
            self.env.build(clips_text(rule))

    def run(self, facts: list[SlotFact]) -> tuple[set[SlotFact], Counter[str]]:
        self.fired.clear()
        self.env.reset()
        for fact in facts:
            values = {k: self._symbol(v) if isinstance(v, str) else v for k, v in fact.items()}
            self.env.find_template(type(fact).__name__).assert_fact(**values)
        self.env.run()
        found = set()
        for fact in self.env.facts():
            if fact.template.name in CLASSES:
                values = {k: v if isinstance(v, int) else str(v) for k, v in dict(fact).items()}
                found.add(CLASSES[fact.template.name](**values))
        return found, Counter(self.fired)
