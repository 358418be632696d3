"""The whole rule base in memory: cards, garments, sources, and one engine built from the cards."""

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from functools import lru_cache
from pathlib import Path

from advisor.core.case import Case
from advisor.core.model import Key
from advisor.core.question import Look, Question
from advisor.engine import Engine
from advisor.errors import UsageError, nearest
from advisor.knowledge.cards import Card
from advisor.knowledge.facts import FACTS
from advisor.knowledge.fix import Fix
from advisor.lengths import TAPES, Tape
from advisor.rulebase.cautions import Cause, read_causes
from advisor.rulebase.garment import Garment, read_garment, read_roles
from advisor.rulebase.grades import GradeBook, read_grades
from advisor.rulebase.load import load_cards
from advisor.rulebase.locate import rules_folder
from advisor.rulebase.looks import check_looks, read_looks
from advisor.rulebase.reads import RoleSlot, all_read
from advisor.rulebase.sources import Source, read_sources
from advisor.rulebase.specs import spec_of
from advisor.words import retold


@dataclass(frozen=True, eq=False)
class RuleBase:
    """Everything the advisor knows. `files` gives the file of each card by id, `read` what their conditions look at.

    `looks` are the ways of looking a garment over, in the order one takes them.
    """

    folder: Path
    rules: Mapping[str, Card]
    fixes: Mapping[str, Fix]
    files: Mapping[str, Path]
    garments: Mapping[str, Garment]
    sources: Mapping[str, Source]
    grades: GradeBook
    engine: Engine
    read: frozenset[RoleSlot]
    causes: tuple[Cause, ...] = ()
    looks: Mapping[str, Look] = field(default_factory=dict)

    def asked(self, case: Case) -> Mapping[Key, Question]:
        """The questions of a case's garment as they are put to whoever reads its tape."""
        tape = TAPES[case.tape]
        return {key: _on_tape(question, tape) for key, question in self.garment(case.garment).questions.items()}

    def garment(self, id: str) -> Garment:
        """A garment type by id. UsageError names the nearest."""
        if id not in self.garments:
            raise UsageError(f"no garment '{id}'", hint=nearest(id, self.garments))
        return self.garments[id]

    def questions(self) -> dict[str, Mapping[Key, Question]]:
        """The questions of every garment, by garment id: what a case file is checked against."""
        return {id: garment.questions for id, garment in self.garments.items()}


def _on_tape(question: Question, tape: Tape) -> Question:
    if tape.unit == "in":
        return question
    return replace(
        question,
        name=retold(question.name, tape),
        ask=retold(question.ask, tape),
        help=retold(question.help, tape),
        alone=retold(question.alone, tape),
        sign=retold(question.sign, tape),
        words={word: retold(meaning, tape) for word, meaning in question.words.items()},
    )


def read_base(folder: Path, order: tuple[str, ...] | None = None) -> RuleBase:
    """The rule base of `folder`. `order` lists rule ids in the order the engine gets them (for tests)."""
    loaded = load_cards(folder)
    roles, looks = read_roles(folder / "roles"), read_looks(folder / "looks.toml")
    check_looks(roles, looks)
    garments = {path.stem: read_garment(path, roles) for path in sorted((folder / "garments").glob("*.toml"))}
    ids = order if order is not None else tuple(loaded.rules)
    engine = Engine([spec_of(id, loaded.rules[id]) for id in ids], FACTS)
    return RuleBase(
        folder=folder,
        rules=loaded.rules,
        fixes=loaded.fixes,
        files=loaded.files,
        garments=garments,
        sources=read_sources(folder / "sources.toml"),
        grades=read_grades(folder / "grades.toml"),
        engine=engine,
        read=all_read(loaded.rules.values()),
        causes=read_causes(folder / "cautions.toml"),
        looks=looks,
    )


@lru_cache(maxsize=1)
def the_base() -> RuleBase:
    """The rule base that came with the program, read once."""
    return read_base(rules_folder())
