"""Building the trace while the advice is worked out."""

from collections.abc import Sequence
from functools import lru_cache
from types import MappingProxyType

from advisor.advise.kept import Kept
from advisor.advise.world import World
from advisor.core.figure import Figure
from advisor.core.model import Change, Effect, Key, Mm, Model
from advisor.core.trace import Node, NodeKind, Trace
from advisor.core.work import NodeId
from advisor.engine import SlotFact
from advisor.figures.called import called
from advisor.knowledge.facts import Joined, Measure, Trait
from advisor.lengths import Tape
from advisor.words import Teller, capital

HOW_WORDS = {"pinned": "as pinned", "measured": "as measured", "told": "as you said"}

KEPT = 4096
# By the identity of the figure, which is kept beside its words so that no other can take it.
_told: Kept[tuple[Figure, NodeId, str]] = Kept(KEPT)


@lru_cache(maxsize=KEPT)
def _shown(tape: Tape, mm: Mm) -> str:
    return Teller(tape, {}).value(mm)


class Tracer:
    """Makes nodes once and remembers which node tells the present value of each key."""

    def __init__(self, world: World, teller: Teller) -> None:
        self.world, self.teller = world, teller
        self.nodes: dict[NodeId, Node] = {}
        self.current: dict[Key, NodeId] = {}

    def trace(self) -> Trace:
        """The trace so far."""
        return Trace(MappingProxyType(dict(self.nodes)))

    def add(self, id: NodeId, kind: NodeKind, words: str, parents: Sequence[NodeId] = (), source: str = "") -> NodeId:
        """A node; the first made under an id stands."""
        if id not in self.nodes:
            self.nodes[id] = Node(id, kind, self.teller.fixed(words), tuple(dict.fromkeys(parents)), source)
        return id

    def key(self, key: Key, model: Model) -> NodeId:
        """The node that tells the value of `key` in `model`."""
        if key not in self.current:
            self.current[key] = self._first(key, model)
        return self.current[key]

    def _first(self, key: Key, model: Model) -> NodeId:
        world, garment = self.world, self.world.garment
        name = capital(garment.names[key])
        words = name if self._nominal(key) else f"{name}: {self._value(key, model)}"
        if key in world.given:
            known = world.how.get(key)
            how = HOW_WORDS[known.how] if known and known.value == world.given[key] else "supposed"
            told = f" ({known.told})" if known and known.told else ""
            return self.add(f"answer {key}", "answer", f"{words}, {how}{told}")
        if key in world.reckoned:
            parents = [self.key(term, model) for _, term, _ in world.reckoned[key].terms if term]
            return self.add(f"reckoned {key}", "figure", f"{words} = {self._sum(key)}", parents, "common-practice")
        if key in garment.by_word:
            entry = garment.by_word[key]
            return self.add(f"by word {key}", "figure", words, [self.key(entry.state, model)], entry.source)
        if key in garment.questions:
            return self.add(f"assumed {key}", "assumed", f"{words}, taken for granted until asked")
        return self.add(f"start {key}", "assumed", f"{words}, as it came")

    def _nominal(self, key: Key) -> bool:
        """Whether only differences of this measure mean anything: nobody measured it, and nothing stands in."""
        garment = self.world.garment
        if key in self.world.reckoned:
            return any(self._nominal(term) for _, term, _ in self.world.reckoned[key].terms if term)
        if key in garment.questions or key in garment.by_word or key not in garment.measures:
            return False
        start = garment.measures[key]
        return start != 0 and not isinstance(start, str)

    def _sum(self, key: Key) -> str:
        parts: list[str] = []
        for sign, term, mm in self.world.reckoned[key].terms:
            if mm or not parts:
                mark = ("- " if sign < 0 else "+ ") if parts else ("-" if sign < 0 else "")
                nominal = term != "" and self._nominal(term)
                parts.append(mark + ("as it is now" if nominal else self._shown(mm)))
        return " ".join(parts)

    def _value(self, key: Key, model: Model) -> str:
        if key in model.measures:
            return self._shown(model.measures[key])
        question = self.world.garment.questions.get(key)
        word = model.states[key]
        return question.words.get(word, word.replace("_", " ")) if question else word.replace("_", " ")

    def change(self, effect: Effect, after: Model, cause: NodeId) -> None:
        """`effect` was had: the key's value is told by a new node from now on."""
        if isinstance(effect, Change) and not effect.mm:
            return
        before = self.current.get(effect.key)
        name = capital(self.world.garment.names[effect.key])
        parents = [cause, *([before] if before else [])]
        if isinstance(effect, Change):
            parents.append(self.figure(effect.by, after))
            by = f"{self._shown(abs(effect.mm))} {'more' if effect.mm > 0 else 'less'}"
            words = (
                f"{name}: {by}" if self._nominal(effect.key) else f"{name}: {by}, now {self._value(effect.key, after)}"
            )
        else:
            words = f"{name}: now {self._value(effect.key, after)}"
        id = f"after {cause} {effect.key}"
        while id in self.nodes:
            id += "'"
        self.current[effect.key] = self.add(id, "value", words, parents)

    def figure(self, figure: Figure, model: Model) -> NodeId:
        """The node of a figure: its formula with the inputs filled in."""
        id, words = self._told(figure)
        if id in self.nodes:
            return id
        parents = [self.key(name, model) for name in figure.inputs if name in model.measures or name in model.states]
        parents += [name for name in figure.inputs if name in self.nodes]
        return self.add(id, "figure", words, parents, figure.source)

    def _told(self, figure: Figure) -> tuple[NodeId, str]:
        """The name and the words of a figure; fixes are sized once for many worlds, so most were told before."""
        name = self.world.garment.names.get(figure.id, "")
        token = (id(figure), self.teller.tape, name)
        known = _told.get(token)
        if known is None:
            words = f"{capital(name or called(figure.id))}: {self.teller.formula(figure)}"
            known = _told.put(token, (figure, f"figure {figure.id} {hash_free(figure)}", words))
        return known[1:]

    def _shown(self, mm: Mm) -> str:
        return _shown(self.teller.tape, mm)

    def fact(self, fact: SlotFact, model: Model) -> list[NodeId]:
        """The nodes a fact of the garment rests on."""
        if isinstance(fact, Measure | Trait):
            return [self.key(fact.key, model)]
        if isinstance(fact, Joined):
            join = next(join for join in model.joins if join.id == fact.id)
            return [self.key(join.a, model), self.key(join.b, model)]
        return []


def hash_free(figure: Figure) -> str:
    """A name for a figure that is the same in every process: value, formula and inputs."""
    return f"{figure.value} {figure.formula} {','.join(figure.inputs)}"
