"""Everything the checks look at, read file by file, so that one broken file hides nothing but itself."""

import ast
import re
from collections.abc import Callable, Iterator, Mapping
from contextlib import contextmanager
from dataclasses import dataclass, field
from functools import cached_property
from pathlib import Path
from typing import Any, TypeVar

from advisor.casefile import read_case
from advisor.check.fault import Book
from advisor.check.marks import marked
from advisor.core.case import Case
from advisor.core.stages import STAGES
from advisor.engine import Engine
from advisor.errors import AdvisorError, KnowledgeError, nearest
from advisor.knowledge.cards import Answer, Card, Condition, Example, Find, Near
from advisor.knowledge.facts import FACTS
from advisor.knowledge.fix import Fix
from advisor.rulebase.base import RuleBase
from advisor.rulebase.garment import Garment, RoleShape, read_garment
from advisor.rulebase.grades import GradeBook, read_grades
from advisor.rulebase.load import KINDS, NOT_TOPICS, card_id, load_module
from advisor.rulebase.locate import rules_folder
from advisor.rulebase.reads import all_read
from advisor.rulebase.sources import Source, read_sources
from advisor.rulebase.specs import spec_of
from advisor.rulebase.toml import read_shape

T = TypeVar("T")


@dataclass
class Material:
    """The rule base of `folder` and the cases of `cases`, as far as they can be read.

    `sound`: the rules whose conditions an engine takes; only those are run. `unread`: the kinds of card (findings,
    fixes, ...) of which some file could not be read, so that what seems to be missing may be in it.
    """

    folder: Path
    cases: Path
    rules: dict[str, Card] = field(default_factory=dict)
    fixes: dict[str, Fix] = field(default_factory=dict)
    files: dict[str, Path] = field(default_factory=dict)
    roles: dict[str, RoleShape] = field(default_factory=dict)
    garments: dict[str, Garment] = field(default_factory=dict)
    sources: Mapping[str, Source] = field(default_factory=dict)
    grades: GradeBook | None = None
    sound: set[str] = field(default_factory=set)
    unread: set[str] = field(default_factory=set)
    read_cases: dict[str, Case] = field(default_factory=dict)
    _made: dict[Callable[..., Any], Any] = field(default_factory=dict)
    _sorted: list[tuple[str, Card]] = field(default_factory=list)
    _texts: dict[Path, str] = field(default_factory=dict)
    _trees: dict[str, ast.Module] = field(default_factory=dict)
    _lines: dict[str, dict[str, int]] = field(default_factory=dict)
    _alone: dict[str, Engine] = field(default_factory=dict)

    def once(self, make: Callable[["Material"], T]) -> T:
        """What `make` makes of this material, made once and kept for all checks."""
        if make not in self._made:
            self._made[make] = make(self)
        made: T = self._made[make]
        return made

    def where(self, path: Path | str) -> str:
        """A path as it is told: from the checkout on. Of a card's id: its file."""
        if isinstance(path, str):
            path = self.files[path]
        for root in (self.folder.parent, self.cases.parent):
            if path.is_relative_to(root):
                return path.relative_to(root).as_posix()
        return path.name

    def of(self, kind: type[Card]) -> Iterator[tuple[str, Any]]:
        """The rules of one kind (Find, Answer, Veto), by id."""
        if not self._sorted:
            self._sorted = sorted(self.rules.items())
        return ((id, card) for id, card in self._sorted if isinstance(card, kind))

    def cards(self) -> Iterator[tuple[str, Card | Fix]]:
        """All cards by id, fixes too."""
        both: dict[str, Card | Fix] = {**self.rules, **self.fixes}
        yield from sorted(both.items())

    @property
    def shipped(self) -> bool:
        """Whether this is the rule base the program came with; its figures and operations are checked along."""
        return self.folder.resolve() == rules_folder().resolve()

    @cached_property
    def problems(self) -> dict[str, list[str]]:
        """The names of problems, each with the findings that find it."""
        found: dict[str, list[str]] = {}
        for id, card in self.of(Find):
            found.setdefault(card.problem, []).append(id)
        return found

    @cached_property
    def answers(self) -> dict[str, list[tuple[str, Answer]]]:
        """The answers to each problem, by id."""
        found: dict[str, list[tuple[str, Answer]]] = {}
        for id, card in self.of(Answer):
            found.setdefault(card.problem, []).append((id, card))
        return found

    @cached_property
    def places_named(self) -> re.Pattern[str]:
        """Where a text may begin with a place of some garment and a dot, or hold the name of a garment."""
        places = sorted({name for garment in self.garments.values() for name in garment.places})
        garments = [id for id in sorted(self.garments) if "_" in id]
        return re.compile("|".join([*(rf"[\"']{name}\." for name in places), *garments]) or "(?!)")

    def text(self, path: Path) -> str:
        """The text of a file; "" of one that cannot be read, which its own reading tells of."""
        if path not in self._texts:
            try:
                self._texts[path] = path.read_text(encoding="utf-8")
            except (OSError, UnicodeDecodeError):
                self._texts[path] = ""
        return self._texts[path]

    def all_files(self) -> list[Path]:
        """Every rule, role, garment and case, sorted."""
        paths = [*self.folder.rglob("*.py"), *self.folder.rglob("*.toml"), *self.cases.glob("*.toml")]
        return sorted(path for path in paths if "__pycache__" not in path.parts)

    def is_frame(self, path: Path) -> bool:
        """Whether something in it is still to be filled in."""
        return next(marked(self.text(path)), None) is not None

    def tree(self, id: str) -> ast.Module:
        """The parsed source of a card."""
        if id not in self._trees:
            self._trees[id] = ast.parse(self.text(self.files[id]))
        return self._trees[id]

    def line(self, id: str, text: str = "", keyword: str = "") -> int:
        """The line of a card's file where the literal `text`, or else the argument `keyword`, stands; or 0."""
        if id not in self._lines:
            self._lines[id] = _lines(self.tree(id)) if id in self.files else {}
        lines = self._lines[id]
        return lines.get(text, lines.get(f"{keyword}=", 0)) if text else lines.get(f"{keyword}=", 0)

    def alone(self, id: str) -> Engine:
        """An engine of one rule."""
        if id not in self._alone:
            self._alone[id] = self.engine_of((id,))
        return self._alone[id]

    @cached_property
    def whole(self) -> Engine:
        """One engine of all sound rules."""
        return self.engine_of(tuple(sorted(self.sound)))

    def engine_of(self, ids: tuple[str, ...]) -> Engine:
        """An engine of these rules, in this order."""
        return Engine([spec_of(id, self.rules[id]) for id in ids], FACTS)

    @cached_property
    def plain(self) -> RuleBase:
        """The rule base of the sound rules."""
        return self.base(self.whole)

    def base(self, engine: Engine) -> RuleBase:
        """A rule base of the sound rules, for advice and plans, with this engine."""
        assert self.grades is not None
        return RuleBase(
            folder=self.folder,
            rules={id: self.rules[id] for id in sorted(self.sound)},
            fixes=dict(self.fixes),
            files=dict(self.files),
            garments=dict(self.garments),
            sources=self.sources,
            grades=self.grades,
            engine=engine,
            read=all_read(self.rules[id] for id in sorted(self.sound)),
        )


def read_material(folder: Path, cases: Path, book: Book) -> Material:
    """Everything below `folder` that can be read; what cannot is written into `book`."""
    material = Material(folder, cases)
    for path in sorted((folder / "roles").glob("*.toml")):
        with _told(book, material, path):
            material.roles[path.stem] = read_shape(path, RoleShape)
    for path in sorted((folder / "garments").glob("*.toml")):
        if material.is_frame(path):
            continue
        with _told(book, material, path):
            material.garments[path.stem] = read_garment(path, material.roles)
    with _told(book, material, folder / "sources.toml"):
        material.sources = read_sources(folder / "sources.toml")
    with _told(book, material, folder / "grades.toml"):
        material.grades = read_grades(folder / "grades.toml")
    for path in _card_files(material, book):
        if not material.is_frame(path):
            with _told(book, material, path):
                _load(material, path)
                continue
        material.unread.add(path.parent.name)
    for id in sorted(material.rules):
        with _told(book, material, material.files[id], id):
            material.alone(id)
            material.sound.add(id)
    questions = {id: garment.questions for id, garment in material.garments.items()}
    for path in sorted(cases.glob("*.toml")):
        if material.is_frame(path):
            continue
        with _told(book, material, path):
            material.read_cases[path.name] = read_case(path, questions).case
    return material


@contextmanager
def _told(book: Book, material: Material, path: Path, card: str = "") -> Iterator[None]:
    try:
        yield
    except AdvisorError as fault:
        number = re.search(r":(\d+)$", fault.where)
        inside = "" if str(path) in fault.where or card else f" ({fault.where})"
        line = int(number[1]) if number else material.line(card, keyword="when")
        book.error(material.where(path), fault.what + inside, fault.hint or "mend the file", line)


def _lines(tree: ast.Module) -> dict[str, int]:
    """The first line of each literal text, and of the value of each argument as `name=`."""
    found: dict[str, int] = {}
    nodes = [node for node in ast.walk(tree) if isinstance(node, ast.Constant | ast.keyword)]
    for node in sorted(nodes, key=lambda node: node.lineno):
        if isinstance(node, ast.Constant) and isinstance(node.value, str):
            found.setdefault(node.value, node.lineno)
        elif isinstance(node, ast.keyword) and node.arg:
            found.setdefault(f"{node.arg}=", node.value.lineno)
    return found


def _card_files(material: Material, book: Book) -> Iterator[Path]:
    for path in sorted(material.folder.rglob("*.py")):
        parts = path.relative_to(material.folder).parts
        if "__pycache__" in parts or parts == ("__init__.py",):
            continue
        if len(parts) == 3 and parts[0] not in NOT_TOPICS and parts[1] in KINDS:
            yield path
            continue
        near = nearest(parts[1], KINDS) if len(parts) == 3 else ""
        book.error(
            material.where(path), "lies where no card belongs", f"rules/<topic>/<kind>/<name>.py; {near}".rstrip("; ")
        )


def _load(material: Material, path: Path) -> None:
    id = card_id(path, material.folder)
    name, kind = KINDS[path.parent.name]
    module = load_module(path, id)
    cards = {key: value for key, value in vars(module).items() if isinstance(value, Card | Fix)}
    own = [key for key, value in cards.items() if isinstance(value, kind)]
    if own != [name] or len(cards) != 1:
        raise KnowledgeError(
            f"holds {_counted(cards)} where one {kind.__name__} called '{name}' belongs",
            where=str(path),
            hint=f"a file in {path.parent.name}/ says `{name} = {kind.__name__}(...)` once, and nothing else",
        )
    card = cards[name]
    for part, value in vars(card).items():
        fault = _misshaped(part, value)
        if fault:
            raise KnowledgeError(f"{part} {fault[0]}", where=str(path), hint=fault[1])
    material.files[id] = path
    if isinstance(card, Fix):
        material.fixes[id] = card
    else:
        material.rules[id] = card


TEXTS = {"title", "why", "source", "says", "problem", "fix", "role", "wrong_when"}
PARTS: dict[str, type] = {"when": Condition, "fires": Example, "near": Near, "cautions": str}


def _misshaped(field: str, value: object) -> tuple[str, str] | None:
    """What is wrong with the kind of thing in one field of a card, and what to do."""
    if field in PARTS:
        if not isinstance(value, tuple):
            return f"is a {type(value).__name__}, not a tuple", f"write {field}=(..., ) with a comma before the bracket"
        odd = next((part for part in value if not isinstance(part, PARTS[field])), None)
        if odd is not None:
            return f"holds a {type(odd).__name__}", f"every part of it is a {PARTS[field].__name__}"
    elif field == "stage" and value not in STAGES:
        return f"is {value!r}", nearest(str(value), STAGES)
    elif field == "fix" and isinstance(value, tuple) and all(isinstance(one, str) and one for one in value):
        return None
    elif field in TEXTS and not isinstance(value, str):
        return f"is a {type(value).__name__}, not a text", "write it between quotes"
    return None


def _counted(cards: Mapping[str, object]) -> str:
    return " and ".join(f"a {type(card).__name__} called '{name}'" for name, card in cards.items()) or "no card"
