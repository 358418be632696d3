"""Answers and choices that could not be saved, noted in the journal and offered when the case is opened again.

Everything else is in the case file already: it is saved as it is given.
"""

import json
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path
from typing import Any

from advisor.core.case import Answer, Choice, FindingId, Known, Unknown
from advisor.core.model import Key
from advisor.core.question import Question
from advisor.errors import AdvisorError
from advisor.ground import Journal
from advisor.interview.session import Session
from advisor.words import capital


@dataclass(frozen=True)
class Note:
    """One answer to the question `key`, or one choice for the finding `key`."""

    key: Key | FindingId
    given: Answer | Choice

    def told(self, session: Session) -> str:
        """In the person's words."""
        if isinstance(self.given, Choice):
            fix = session.base.fixes.get(self.given.fix)
            return f"the choice: {fix.title}" if fix else "a choice"
        question = session.questions[self.key]
        if isinstance(self.given, Unknown):
            return f"{capital(question.name)}: cannot say"
        value = self.given.value
        words = question.words.get(value, value) if isinstance(value, str) else session.teller.value(value)
        return f"{capital(question.name)}: {words}"

    def give(self, session: Session) -> None:
        """Give it again. SaveError as the first time."""
        if isinstance(self.given, Choice):
            session.choose(self.key, self.given)
        else:
            session.answer(self.key, self.given)


def answer_note(key: Key, answer: Answer) -> str:
    """The note for an answer."""
    if isinstance(answer, Unknown):
        return _text({"answer": key, "unknown": True, "at": answer.at})
    length = not isinstance(answer.value, str)
    row = {"answer": key, "value": str(answer.value), "length": length, "how": answer.how}
    return _text({**row, "at": answer.at, "told": answer.told})


def choice_note(finding: FindingId, choice: Choice) -> str:
    """The note for a choice."""
    return _text({"choice": finding, "fix": choice.fix, "reason": choice.reason})


def _text(row: dict[str, object]) -> str:
    return json.dumps(row, sort_keys=True)


class Unsaved:
    """The journal of one case as the screens use it."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self.journal = Journal(path)
        self.noted: set[str] = set()

    def note(self, text: str) -> None:
        """Keep what could not be saved. SaveError if not even that can be done."""
        self.journal.note(text)
        self.noted.add(_about(text))

    def saved(self, about: str) -> None:
        """What concerns this key is in the file; once nothing else is noted, the notes go."""
        self.noted.discard(about)
        if not self.noted:
            self.journal.clear()

    def pending(self, session: Session) -> tuple[Note, ...]:
        """What earlier sittings could not save and the case does not hold: the last of each, as far as it fits."""
        notes = {note.key: note for text in self.journal.pending() if (note := _read(text, session))}
        case = session.case
        open_ones = [n for n in notes.values() if not _same(n, case.answers.get(n.key) or case.choices.get(n.key))]
        self.noted |= {note.key for note in open_ones}
        return tuple(open_ones)

    def forget(self) -> None:
        """Drop them."""
        self.noted.clear()
        self.journal.clear()

    def close(self) -> None:
        """Let go of the journal; what is noted is offered the next time."""
        self.journal.close()


def _about(text: str) -> str:
    row = json.loads(text)
    return str(row.get("answer") or row.get("choice"))


def _same(note: Note, held: object) -> bool:
    if isinstance(note.given, Known) and isinstance(held, Known):
        return note.given.value == held.value
    if isinstance(note.given, Choice) and isinstance(held, Choice):
        return (note.given.fix, note.given.reason) == (held.fix, held.reason)
    return note.given == held


def _read(text: str, session: Session) -> Note | None:
    """A note, if it fits the case: anybody may have written the journal, and the rules may have changed."""
    try:
        row = json.loads(text)
        return next(_notes(row, session.questions), None) if isinstance(row, dict) else None
    except (ValueError, TypeError, ZeroDivisionError, AdvisorError):
        return None


def _notes(row: dict[str, Any], questions: dict[Key, Question]) -> Iterator[Note]:
    if isinstance(row.get("choice"), str) and isinstance(row.get("fix"), str):
        yield Note(row["choice"], Choice(row["fix"], str(row.get("reason", ""))))
    question = questions.get(str(row.get("answer")))
    if question is None:
        return
    if row.get("unknown") is True:
        yield Note(question.key, Unknown(str(row.get("at", ""))))
    elif question.kind == "word" and row.get("value") in question.words:
        yield Note(question.key, Known(row["value"], question.how, str(row.get("at", ""))))
    elif question.kind != "word" and row.get("length") is True:
        value = Fraction(str(row["value"]))
        if question.least <= value <= question.most:
            yield Note(question.key, Known(value, question.how, str(row.get("at", "")), str(row.get("told", ""))))
