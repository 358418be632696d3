"""Reading what a person types as the answer to a question."""

from dataclasses import dataclass
from fractions import Fraction

from advisor.core.case import Known, Unknown
from advisor.core.model import Mm
from advisor.core.question import Question
from advisor.errors import UsageError, nearest
from advisor.figures.seams import pinch_to_loss
from advisor.lengths import read_length
from advisor.words import Teller

CANNOT_SAY = frozenset({"?", "unknown", "don't know", "dont know", "cannot say"})


@dataclass(frozen=True)
class Pinch:
    """One way of giving a pinned amount: what it is, and at how many places the fold sits (0: the cloth that goes)."""

    words: str
    places: int


PINCHES = (
    Pinch("the depth of a fold, at one place", 1),
    Pinch("the depth of a fold, at each of two places", 2),
    Pinch("the cloth that goes, all told", 0),
)


def read_answer(question: Question, text: str, teller: Teller, at: str = "") -> Known | Unknown:
    """The answer `text` gives: a word by its number or itself, a length, or that she cannot say.

    UsageError or LengthError say what is wrong with it and what would do. A pinch is read as the cloth that goes.
    """
    typed = text.strip()
    if typed.casefold() in CANNOT_SAY:
        return Unknown(at)
    if question.kind == "word":
        return Known(read_word(question, typed), question.how, at)
    return Known(read_amount(question, typed, teller), question.how, at)


def read_word(question: Question, typed: str) -> str:
    """One of the question's words: its number as listed, the word, or the beginning of its meaning."""
    words = list(question.words)
    if typed.isdecimal() and typed.isascii():
        if 1 <= int(typed) <= len(words):
            return words[int(typed) - 1]
        raise UsageError(f"there is no answer {int(typed)}", hint=f"give a number from 1 to {len(words)}")
    wanted = typed.casefold()
    if wanted in words:
        return wanted
    begun = [word for word in words if wanted and question.words[word].casefold().startswith(wanted)]
    if len(begun) == 1:
        return begun[0]
    raise UsageError(f"'{typed}' is not one of the answers", hint=nearest(wanted, words))


def read_amount(question: Question, typed: str, teller: Teller) -> Mm:
    """A length within the question's range, mm."""
    return read_length(typed, unit=teller.tape.unit, least=question.least, most=question.most, what=question.name)


def pinned(question: Question, depth: Mm, pinch: Pinch, teller: Teller, at: str = "") -> Known:
    """The cloth that goes for a pinch given one of the PINCHES ways; what was said is kept beside it.

    LengthError if the cloth that goes is past what the question allows.
    """
    if pinch.places == 0:
        return Known(depth, "pinned", at)
    loss = pinch_to_loss(depth, pinch.places)
    said = teller.value(depth)
    places = "at one place" if pinch.places == 1 else "at each of two places"
    read_length(teller.value(loss), unit=teller.tape.unit, least=Fraction(0), most=question.most, what=question.name)
    return Known(loss, "pinned", at, f"a fold {said} deep {places}")
