"""Opening a case: from a file or a text to a Case that can be trusted, or one CaseError that says why not."""

import pathlib
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from typing import Any

from advisor.casefile.shape import VERSION, CaseShape, Fault, shaped
from advisor.casefile.syntax import at_row, load
from advisor.casefile.vocabulary import Garments, answer_of, question_of, questions_of
from advisor.core.case import Answer, Case, Choice, Entry, Limits, Record, Stood, Sums
from advisor.core.model import Key
from advisor.errors import CaseError
from advisor.ground import Digest, line, read_text

Migration = Callable[[dict[str, Any]], dict[str, Any]]

MIGRATIONS: dict[int, Migration] = {}
"""For each older format, the step to the next: plain values in and out, "version" one higher. None so far."""


@dataclass(frozen=True)
class Opened:
    """A case as opened: the file's text as it stands on disk, and the digest a save must still find there."""

    case: Case
    path: pathlib.Path
    digest: Digest
    text: str


def read_case(path: pathlib.Path, garments: Garments) -> Opened:
    """The case in the file at `path`, which is only read. Raises CaseError."""
    text, digest = read_text(path)
    return Opened(parse_case(text, garments, where=shown(path)), path, digest, text)


def shown(path: pathlib.Path) -> str:
    """`path` fit for a message."""
    return line(str(path), 300)


def parse_case(text: str, garments: Garments, *, where: str = "case") -> Case:
    """The case that `text` tells. Raises CaseError at `where`, with the line if it can be told."""
    raw = load(text, where)
    try:
        raw = current(raw)
        shape = shaped(raw)
        return _case(shape, garments)
    except Fault as fault:
        raise CaseError(fault.what, where=at_row(text, fault.path, where), hint=fault.hint) from None


def current(raw: dict[str, Any]) -> dict[str, Any]:
    """`raw` brought up to this format. Raises Fault for a version that is missing, newer or not known."""
    version = format_of(raw)
    if version > VERSION:
        what = f"this file has format {version}, made by a newer version; nothing was changed"
        raise Fault(("version",), what, "open it with that version, or bring this one up to date")
    while version < VERSION:
        if version not in MIGRATIONS:
            hint = f"a case written today says version = {VERSION}"
            raise Fault(("version",), f"there is no format {version}", hint)
        raw = MIGRATIONS[version](raw)
        version += 1
    return raw


def format_of(raw: Mapping[str, Any]) -> int:
    """The format a file says it has. Raises Fault if it does not say."""
    version = raw.get("version")
    if version is None:
        raise Fault(("version",), "'version' is missing", f"add a line version = {VERSION} at the top")
    if not isinstance(version, int) or isinstance(version, bool):
        raise Fault(("version",), "'version' must be a whole number", f"write version = {VERSION}")
    return version


def _case(shape: CaseShape, garments: Garments) -> Case:
    questions = questions_of(shape.garment, garments)
    answers: dict[Key, Answer] = {}
    for place, slots in shape.answers.items():
        for slot, row in slots.items():
            question = question_of(place, slot, questions)
            answers[question.key] = answer_of(row, question, shape.tape)
    return Case(
        garment=shape.garment,
        title=shape.title,
        tape=shape.tape,
        version=shape.version,
        story=shape.story,
        answers=answers,
        choices={finding: Choice(row.fix, row.reason, row.at) for finding, row in shape.choices.items()},
        limits=limits_of(shape),
        log=log_of(shape),
        record=record_of(shape),
    )


def limits_of(shape: CaseShape) -> Limits:
    """The limits a file sets."""
    given, weigh = shape.limits, shape.limits.weigh
    return Limits(
        given.hardest,
        given.weakest,
        weigh.difficulty,
        weigh.durability,
        weigh.visibility,
        given.visible,
        given.cutting,
        given.buttonholes,
        given.minutes,
        given.money,
        tuple(sorted(given.prices.items())),
    )


def record_of(shape: CaseShape) -> Record | None:
    """The plan a file has on record, if any."""
    row = shape.record
    if row is None:
        return None
    return Record(
        at=row.at,
        advisor=row.advisor,
        rules=row.rules,
        others=row.others,
        formulas=row.formulas,
        operations=row.operations,
        answers=row.answers,
        advice=row.advice,
        totals=Sums(**row.totals.model_dump()),
        findings={id: Stood(each.took, tuple(each.stood), tuple(each.out)) for id, each in row.findings.items()},
        steps={stage: tuple(_step(each) for each in steps) for stage, steps in row.steps.items()},
        cards={f"{folder}.{name}": mark for folder, marks in row.cards.items() for name, mark in marks.items()},
    )


def _step(text: str) -> tuple[str, str]:
    id, _, mark = text.rpartition(" ")
    return id, mark


def log_of(shape: CaseShape) -> tuple[Entry, ...]:
    """The log of a file."""
    return tuple(Entry(row.at, row.what) for row in shape.log)
