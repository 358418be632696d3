"""Whether a case file speaks the garment's language: its places, slots, words, and lengths that can be."""

import re
from collections.abc import Mapping
from fractions import Fraction

from advisor.casefile.shape import AnswerRow, Fault
from advisor.core.case import Answer, Known, TapeName, Unknown
from advisor.core.model import Key, place_of, slot_of
from advisor.core.question import Question
from advisor.errors import nearest
from advisor.ground import line
from advisor.lengths import TAPES, ReadingError, read_length, show

Questions = Mapping[Key, Question]
Garments = Mapping[str, Questions]
"""The questions of every garment, by the garment's name."""

_EXACT = re.compile(r"(\d{1,30})(?:/(\d{1,30}))?", re.ASCII)


def questions_of(garment: str, garments: Garments) -> Questions:
    """The questions of `garment`. Raises Fault for a garment nobody declared."""
    if garment not in garments:
        raise Fault(("garment",), f"there is no garment '{line(garment, 60)}'", nearest(garment, garments))
    return garments[garment]


def question_of(place: str, slot: str, questions: Questions) -> Question:
    """The question of a slot. Raises Fault for a place or slot the garment does not have."""
    found = questions.get(f"{place}.{slot}")
    if found:
        return found
    places = {place_of(key) for key in questions}
    if place not in places:
        what = f"the garment has no place '{line(place, 60)}'"
        raise Fault(("answers", place), what, nearest(place, places))
    slots = {slot_of(key) for key in questions if place_of(key) == place}
    what = f"nothing is asked about '{line(slot, 60)}' of '{line(place, 60)}'"
    raise Fault(("answers", place, slot), what, nearest(slot, slots))


def answer_of(row: AnswerRow, question: Question, tape: TapeName) -> Answer:
    """The answer a row gives, with bare lengths counted on `tape`. Raises Fault for one it cannot be."""
    if row.unknown:
        return Unknown(at=row.at)
    if row.mm is not None:
        value: Fraction | str = _exact(row.mm, question, tape)
    else:
        read = _word if question.kind == "word" else _lent if _is_lent(row.value or "", question) else _length
        value = read(row.value or "", question, tape)
    return Known(value, row.how or "told", row.at, row.told)


def _path(question: Question) -> tuple[str, ...]:
    return ("answers", place_of(question.key), slot_of(question.key))


def _word(word: str, question: Question, tape: TapeName) -> str:
    if word not in question.words:
        what = f"'{line(word, 60)}' is no answer to {question.key}"
        raise Fault(_path(question), what, nearest(word, question.words))
    return word


SAME = "same as "


def _is_lent(text: str, question: Question) -> bool:
    return isinstance(question.neutral, str) and text.startswith(SAME)


def _lent(text: str, question: Question, tape: TapeName) -> str:
    """The key of another length that this one was said to equal."""
    if text != f"{SAME}{question.neutral}":
        what = f"{question.key} is never '{line(text, 60)}'"
        raise Fault(_path(question), what, f"write '{SAME}{question.neutral}', or a length")
    return str(question.neutral)


def _length(text: str, question: Question, tape: TapeName) -> Fraction:
    try:
        return read_length(text, unit=tape, least=question.least, most=question.most, what=question.key)
    except ReadingError as refusal:
        what = f"{question.key} = '{line(refusal.text, 60)}': {refusal.what} (character {refusal.column})"
        raise Fault(_path(question), what, refusal.hint) from None


def _exact(text: str, question: Question, tape: TapeName) -> Fraction:
    """An exact fraction of millimeters, which only the advisor writes: no tape could show it."""
    parts = _EXACT.fullmatch(text)
    if question.kind == "word" or not parts or not int(parts[2] or 1):
        hint = 'a length by hand goes into value, such as { value = "1 1/2 in" }'
        raise Fault(_path(question), f"{question.key}: '{line(text, 60)}' is no exact length in mm", hint)
    mm = Fraction(int(parts[1]), int(parts[2] or 1))
    if not question.least <= mm <= question.most:
        scale = TAPES[tape]
        hint = f"accepted here: {show(question.least, scale)} to {show(question.most, scale)}"
        raise Fault(_path(question), f"{question.key}: out of the range that can be", hint)
    return mm
