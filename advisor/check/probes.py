"""The worlds the rules are tried on: every answer alone, answers by the handful at random but the same each time,
answers made from the examples of a card, and the cases. No garment there need be a sensible one.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from random import Random

from advisor.advise.sweep import grid
from advisor.advise.world import World, world_of
from advisor.check.material import Material
from advisor.core.case import Case, Choice, FindingId, Limits, TapeName
from advisor.core.model import Key, Value, place_of, slot_of
from advisor.core.question import Question
from advisor.engine import SlotFact
from advisor.knowledge.facts import Measure, Trait
from advisor.lengths import TAPES, show
from advisor.rulebase.garment import Garment

JOINT = 15  # worlds of several answers, shared out among the garments
LEAST_JOINT = 3
THINNEST = 4  # of a grid of lengths every fourth value is tried at the least, however many garments there are
AGAIN = 4  # of what was answered alone at the same role of another garment, every fourth is tried again
HANDFUL = (2, 9)
SEED = 20
TAPE_NAMES: tuple[TapeName, ...] = ("in", "cm")
Answers = Mapping[Key, Value]


@dataclass(frozen=True)
class Probe:
    """One world to try, with how it is told to an author, and the choices a case brings along."""

    told: str
    case: Case
    world: World
    answers: Answers

    @property
    def choices(self) -> Mapping[FindingId, Choice]:
        """The choices of the case."""
        return self.case.choices

    @property
    def limits(self) -> Limits:
        """The limits of the case."""
        return self.case.limits


def probe_of(garment: Garment, answers: Answers, tape: TapeName = "in") -> Probe:
    """The world of these answers."""
    told = ", ".join(f"{key} = {_shown(value, tape)}" for key, value in answers.items())
    case = Case(garment.id, "a trial", tape=tape)
    return Probe(f"{garment.id}: {told or 'nothing answered'}", case, world_of(case, garment, answers), answers)


def of_cases(material: Material) -> Iterator[Probe]:
    """The cases that can be read."""
    for name, case in sorted(material.read_cases.items()):
        if case.garment in material.garments:
            yield Probe(f"cases/{name}", case, world_of(case, material.garments[case.garment]), {})


def alone(garment: Garment, garments: int, seen: dict[tuple[str, str, Value], int]) -> Iterator[Probe]:
    """Nothing answered, then one value of one question at a time, with the answers it comes after.

    Every word; of lengths a grid, the thinner the more garments there are, so that the whole takes as long as ever.
    `seen` counts how often a value was met at a slot of a role, on this garment or one before.
    """
    yield probe_of(garment, {})
    for question in garment.questions.values():
        role = garment.places[place_of(question.key)].role
        values = grid(question, TAPES["in"])
        step = min(garments, THINNEST) if question.kind != "word" else 1
        for value in values[(len(values) - 1) % step :: step]:
            met = (role, slot_of(question.key), value)
            seen[met] = seen.get(met, -1) + 1
            if seen[met] % AGAIN == 0:
                yield probe_of(garment, gated(garment, {question.key: value}))


def both_ways(garment: Garment) -> Iterator[Probe]:
    """What may be worked out in several ways, with the evidence for all of them."""
    for _, ways in sorted(garment.reckoned.items()):
        asked = {term.key for way in ways for term in way if term.key in garment.questions}
        if len(ways) > 1:
            for part in (3, 2):
                values = {key: grid(garment.questions[key], TAPES["in"]) for key in sorted(asked)}
                yield probe_of(garment, gated(garment, {key: each[len(each) // part] for key, each in values.items()}))


def together(garment: Garment, garments: int) -> Iterator[Probe]:
    """Answers by the handful, on the two tapes in turn."""
    random = Random(SEED)
    for number in range(max(JOINT // garments, LEAST_JOINT)):
        tape = TAPE_NAMES[number % 2]
        questions: list[Question] = list(garment.questions.values())
        count = min(random.randint(*HANDFUL), len(questions))
        drawn = {q.key: random.choice(grid(q, TAPES[tape])) for q in random.sample(questions, count)}
        yield probe_of(garment, gated(garment, drawn), tape)


def answers_in(garment: Garment, facts: tuple[SlotFact, ...]) -> dict[Key, Value]:
    """Those facts of an example that somebody could answer about this garment."""
    found: dict[Key, Value] = {}
    for fact in facts:
        if isinstance(fact, Measure | Trait) and fact.key in garment.questions:
            question, value = garment.questions[fact.key], fact.mm if isinstance(fact, Measure) else fact.word
            if isinstance(value, str) == (question.kind == "word") and (
                question.kind != "word" or value in question.words
            ):
                found[fact.key] = value
    return found


def gated(garment: Garment, answers: Answers) -> dict[Key, Value]:
    """`answers` and, before each, an answer it may come after; one that says otherwise gives way."""
    full: dict[Key, Value] = {}
    for key, value in answers.items():
        for gate, words in garment.questions[key].after:
            if answers.get(gate) not in words and full.get(gate) not in words:
                full = {**full, **gated(garment, {gate: words[0]})}
        full.setdefault(key, value)
    return full


def _shown(value: Value, tape: TapeName) -> str:
    return value if isinstance(value, str) else show(value, TAPES[tape])
