"""Garments and roles as their files declare them, put together into one frozen `Garment`."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from fractions import Fraction
from pathlib import Path
from typing import Literal

from advisor.core.model import Crossing, Join, Key, Mm, Place, Relation
from advisor.core.question import Question
from advisor.errors import AdvisorError, KnowledgeError, nearest
from advisor.knowledge.facts import JOIN_KINDS
from advisor.lengths import read_length
from advisor.rulebase.toml import Shape, read_shape

SAME = "same as "


class SlotShape(Shape):
    """A slot somebody is asked for."""

    name: str
    ask: str
    kind: Literal["length", "pinch", "word"]
    neutral: str
    help: str = ""
    alone: str = ""
    how: Literal["pinned", "measured", "told"] = "told"
    words: dict[str, str] = {}
    also: list[str] = []
    least: str = "0 in"
    most: str = "120 in"
    rank: int = 50
    seconds: int = 20
    evidence: bool = False
    after: dict[str, list[str]] = {}
    look: str = ""
    sign: str = ""


class StateShape(Shape):
    """A state only work changes."""

    start: str
    words: list[str]
    meaning: str


class MeasureShape(Shape):
    """A measure nobody is asked for."""

    start: str
    meaning: str


class JoinShape(Shape):
    """A join; in a role's file it names slots, in a garment's places and slots."""

    kind: str
    a: str
    b: str
    relation: Relation = "equal"
    ratio: str = "1"
    slack: str = ""
    when: dict[str, list[str]] = {}


class RoleShape(Shape):
    """A file of rules/roles/. Its joins and reckoned measures hold in every place of the role."""

    title: str
    slots: dict[str, SlotShape] = {}
    states: dict[str, StateShape] = {}
    measures: dict[str, MeasureShape] = {}
    reckoned: dict[str, list[str]] = {}
    joins: list[JoinShape] = []


class PlaceShape(Shape):
    role: str
    words: str


class CrossingShape(Shape):
    seam: str
    length: str
    times: int


class ByWordShape(Shape):
    state: str
    source: str
    lengths: dict[str, str]


class GarmentShape(Shape):
    """A file of rules/garments/."""

    title: str
    places: dict[str, PlaceShape]
    neutral: dict[str, str] = {}
    fixed: dict[str, str] = {}
    after: dict[str, dict[str, list[str]]] = {}
    reckoned: dict[str, list[str]] = {}
    compared: dict[str, str] = {}
    by_word: dict[str, ByWordShape] = {}
    joins: list[JoinShape] = []
    crossings: list[CrossingShape] = []


@dataclass(frozen=True)
class Term:
    """One term of a reckoned measure: +1 or -1 times a key or a fixed length."""

    sign: int
    key: Key = ""
    mm: Mm = Fraction(0)


@dataclass(frozen=True)
class ByWord:
    """A measure that a state decides: mm by word."""

    state: Key
    source: str
    lengths: Mapping[str, Mm]


@dataclass(frozen=True)
class Garment:
    """One garment type. `slack` of a join is None where half a tape mark is meant.

    `measures` are the start values (mm, or a key whose value they take) of what nobody is asked;
    `states` the start words; `allowed` the words each state may take; `names` what each key is called.
    """

    id: str
    title: str
    places: Mapping[str, Place]
    questions: Mapping[Key, Question]
    measures: Mapping[Key, Mm | str]
    states: Mapping[Key, str]
    allowed: Mapping[Key, tuple[str, ...]]
    names: Mapping[Key, str]
    reckoned: Mapping[Key, tuple[tuple[Term, ...], ...]]
    compared: Mapping[Key, Key]
    by_word: Mapping[Key, ByWord]
    joins: tuple[tuple[Join, Mm | None], ...]
    crossings: tuple[Crossing, ...]


def read_roles(folder: Path) -> dict[str, RoleShape]:
    """All roles by name."""
    return {path.stem: read_shape(path, RoleShape) for path in sorted(folder.glob("*.toml"))}


def read_garment(path: Path, roles: Mapping[str, RoleShape]) -> Garment:
    """One garment file with its roles filled in. KnowledgeError names the file and the key."""
    shape = read_shape(path, GarmentShape)
    try:
        return _Builder(path.stem, shape, roles).build()
    except KnowledgeError:
        raise
    except AdvisorError as fault:
        raise KnowledgeError(fault.what, where=f"{path}: {fault.where}", hint=fault.hint) from fault


class _Builder:
    """Puts one garment together; the keys it collects are what the rest of the file may name."""

    def __init__(self, id: str, shape: GarmentShape, roles: Mapping[str, RoleShape]) -> None:
        self.id, self.shape, self.roles = id, shape, roles
        self.questions: dict[Key, Question] = {}
        self.measures: dict[Key, Mm | str] = {}
        self.states: dict[Key, str] = {}
        self.allowed: dict[Key, tuple[str, ...]] = {}
        self.names: dict[Key, str] = {}

    def build(self) -> Garment:
        places = {name: self._place(name, place) for name, place in self.shape.places.items()}
        self._neutrals()
        self._gates()
        shape = self.shape
        return Garment(
            id=self.id,
            title=shape.title,
            places=places,
            questions=dict(sorted(self.questions.items(), key=lambda item: (item[1].rank, item[0]))),
            measures=self.measures,
            states=self.states,
            allowed=self.allowed,
            names=self.names,
            reckoned={
                self._length(key): tuple(self._terms(way) for way in ways)
                for key, ways in {**self._own_reckoned(), **shape.reckoned}.items()
            },
            compared={self._length(key): self._length(other) for key, other in shape.compared.items()},
            by_word={self._length(key): self._by_word(entry) for key, entry in shape.by_word.items()},
            joins=tuple(self._joins()),
            crossings=tuple(
                Crossing(self._in_places(c.seam), self._length(c.length), c.times) for c in shape.crossings
            ),
        )

    def _place(self, name: str, place: PlaceShape) -> Place:
        if place.role not in self.roles:
            raise KnowledgeError(
                f"no role '{place.role}'", where=f"{self.id}: places.{name}", hint=nearest(place.role, self.roles)
            )
        role = self.roles[place.role]
        for slot, entry in role.slots.items():
            key = f"{name}.{slot}"
            self.questions[key] = _question(key, entry, place.words)
            self.names[key] = self.questions[key].name
            if entry.kind == "word":
                self.states[key] = entry.neutral
                self.allowed[key] = (*entry.words, *entry.also)
            else:
                self.measures[key] = _start(entry.neutral, name)
        for slot, state in role.states.items():
            self.states[f"{name}.{slot}"] = state.start
            self.allowed[f"{name}.{slot}"] = tuple(state.words)
            self.names[f"{name}.{slot}"] = state.meaning
        for slot, measure in role.measures.items():
            self.measures[f"{name}.{slot}"] = _start(measure.start, name)
            self.names[f"{name}.{slot}"] = f"{place.words}, {measure.meaning}"
        return Place(name, place.role, place.words)

    def _gates(self) -> None:
        for key, gates in self.shape.after.items():
            # What one place tells may settle that another need not be measured.
            if key not in self.questions:
                where = f"{self.id}: after"
                raise KnowledgeError(f"no question '{key}'", where=where, hint=nearest(key, self.questions))
            after = tuple((gate, tuple(words)) for gate, words in sorted(gates.items()))
            self.questions[key] = replace(self.questions[key], after=(*self.questions[key].after, *after))
        for key, question in self.questions.items():
            for gate, words in question.after:
                known = self.questions[gate].words if gate in self.questions else {}
                for word in words:
                    if word not in known:
                        raise KnowledgeError(
                            f"asked after '{gate}' is '{word}', which it never is", where=key, hint=nearest(word, known)
                        )

    def _neutrals(self) -> None:
        for key in self.shape.fixed:
            # What the kind of garment settles is asked of nobody.
            if self.questions.pop(key, None) is None:
                where = f"{self.id}: fixed"
                raise KnowledgeError(f"no question '{key}'", where=where, hint=nearest(key, self.questions))
        for key, value in {**self.shape.neutral, **self.shape.fixed}.items():
            if key in self.states:
                start: Mm | str = self._word(key, value, f"{self.id}: neutral")
                self.states[key] = value
            else:
                start = self.measures[self._length(key)] = _start(value, key.partition(".")[0])
            if key in self.questions:
                self.questions[key] = replace(self.questions[key], neutral=start)
        for start in self.measures.values():
            if isinstance(start, str):
                self._length(start)

    def _own_reckoned(self) -> dict[Key, list[str]]:
        """What the roles reckon inside themselves, at each of their places."""
        return {
            f"{name}.{slot}": [self._at(name, way) for way in ways]
            for name, place in self.shape.places.items()
            for slot, ways in self.roles[place.role].reckoned.items()
        }

    def _at(self, place: str, way: str) -> str:
        """A role's own sum with its slots turned into keys of `place`."""
        terms = way.split(" ")
        return " ".join(f"{place}.{term}" if f"{place}.{term}" in self.measures else term for term in terms)

    def _joins(self) -> Iterator[tuple[Join, Mm | None]]:
        """The joins of the roles and those of the garment; one the garment repeats is the garment's."""
        found: dict[object, tuple[Join, Mm | None]] = {}
        for name, place in self.shape.places.items():
            for join in self.roles[place.role].joins:
                when = {f"{name}.{slot}": words for slot, words in join.when.items()}
                at = join.model_copy(update={"a": f"{name}.{join.a}", "b": f"{name}.{join.b}", "when": when})
                made = self._join(at)
                found[made[0].id, made[0].when] = made
        for join in self.shape.joins:
            made = self._join(join)
            found[made[0].id, made[0].when] = made
        yield from found.values()

    def _join(self, join: JoinShape) -> tuple[Join, Mm | None]:
        where = f"{self.id}: join of {join.a} and {join.b}"
        if join.kind not in JOIN_KINDS:
            raise KnowledgeError(f"no kind of join '{join.kind}'", where=where, hint=nearest(join.kind, JOIN_KINDS))
        when = tuple(
            (self._known(key), tuple(self._word(key, word, where) for word in words))
            for key, words in sorted(join.when.items())
        )
        slack = read_length(join.slack, unit="in") if join.slack else None
        try:
            ratio = Fraction(join.ratio)
        except (ValueError, ZeroDivisionError) as fault:
            raise KnowledgeError(f"ratio '{join.ratio}' is no number", where=where, hint='"2" or "1.5708"') from fault
        return Join(join.kind, self._length(join.a), self._length(join.b), join.relation, ratio, when=when), slack

    def _by_word(self, entry: ByWordShape) -> ByWord:
        state = self._known(entry.state)
        missing = sorted(set(self.allowed[state]) - set(entry.lengths))
        if missing:
            raise KnowledgeError(f"no length for the word '{missing[0]}' of {state}", where=self.id)
        return ByWord(state, entry.source, {word: read_length(t, unit="in") for word, t in entry.lengths.items()})

    def _terms(self, way: str) -> tuple[Term, ...]:
        terms: list[Term] = []
        for part in way.replace(" - ", " + - ").split(" + "):
            sign, text = (-1, part[2:]) if part.startswith("- ") else (1, part)
            is_key = text.partition(".")[0] in self.shape.places
            if not is_key and text[:1].isalpha():
                raise KnowledgeError(
                    f"'{text}' is neither a measure nor a length",
                    where=f"{self.id}: reckoned '{way}'",
                    hint=nearest(text, self.measures),
                )
            terms.append(Term(sign, key=self._length(text)) if is_key else Term(sign, mm=read_length(text, unit="in")))
        return tuple(terms)

    def _in_places(self, name: str) -> str:
        if name not in self.shape.places:
            raise KnowledgeError(f"no place '{name}'", where=self.id, hint=nearest(name, self.shape.places))
        return name

    def _length(self, key: Key) -> Key:
        if key not in self.measures:
            raise KnowledgeError(f"no measure '{key}'", where=self.id, hint=nearest(key, self.measures))
        return key

    def _word(self, key: Key, word: str, where: str) -> str:
        if word not in self.allowed[self._known(key)]:
            raise KnowledgeError(f"{key} is never '{word}'", where=where, hint=nearest(word, self.allowed[key]))
        return word

    def _known(self, key: Key) -> Key:
        if key not in self.states:
            raise KnowledgeError(f"no state '{key}'", where=self.id, hint=nearest(key, self.states))
        return key


def _start(text: str, place: str) -> Mm | str:
    if text.startswith(SAME):
        other = text.removeprefix(SAME)
        return other if "." in other else f"{place}.{other}"
    return read_length(text, unit="in")


def _question(key: Key, slot: SlotShape, place: str) -> Question:
    if slot.kind == "word" and slot.neutral not in slot.words:
        raise KnowledgeError(
            f"neutral '{slot.neutral}' is no word of it", where=key, hint=nearest(slot.neutral, slot.words)
        )
    neutral: Mm | str = slot.neutral if slot.kind == "word" else _start(slot.neutral, key.partition(".")[0])
    return Question(
        key=key,
        name=_placed(slot.name, key, place),
        ask=_placed(slot.ask, key, place),
        kind=slot.kind,
        neutral=neutral,
        help=_placed(slot.help, key, place),
        alone=_placed(slot.alone, key, place),
        how=slot.how,
        words=slot.words,
        least=read_length(slot.least, unit="in"),
        most=read_length(slot.most, unit="in"),
        rank=slot.rank,
        seconds=slot.seconds,
        evidence=slot.evidence or slot.kind == "pinch",
        after=tuple((f"{key.partition('.')[0]}.{gate}", tuple(words)) for gate, words in sorted(slot.after.items())),
        look=slot.look,
        sign=_placed(slot.sign, key, place, usual="{usual}"),
    )


def _placed(text: str, key: Key, place: str, **more: str) -> str:
    """`text` with {place} filled in, and what `more` names. KnowledgeError for any other brace."""
    try:
        return text.format(place=place, **more)
    except (KeyError, IndexError, ValueError, AttributeError) as fault:
        raise KnowledgeError(
            f"'{text}' cannot be filled in", where=key, hint="{place} is all that may stand in braces"
        ) from fault
