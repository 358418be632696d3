"""A question as the garment declares it: what is asked, what may be answered, what stands in until it is."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal

from advisor.core.case import How
from advisor.core.model import Key, Mm

Kind = Literal["length", "pinch", "word"]


@dataclass(frozen=True)
class Question:
    """One slot of one place. `name` says what it is in a few words, `ask` is the question.

    `kind`: "length" (mm between `least` and `most`), "pinch" (a length pinned on the body: the cloth that
    goes, which she may give as the depth of a fold at one place or at each of two), "word" (one of `words`,
    which maps each word to its meaning).
    `neutral` is what the world holds while nothing is known: a length, a word, or another key whose value it takes.
    `after`: it means something only while each of these keys has one of these words; until then it is not asked.
    `look`, `sign`: she may be asked for it by looking the garment over: where one looks, and what is seen there if
    the answer is another than the usual one ("{usual}" stands for that).
    `evidence`: a reckoned measure may rest on it only where it was given.
    `how` is how such an answer is usually known. `rank` orders the questions as one meets them with the garment
    in hand; `seconds` is how long one takes to answer. `alone` says how to do it without a second person.
    """

    key: Key
    name: str
    ask: str
    kind: Kind
    neutral: Mm | str
    help: str = ""
    alone: str = ""
    how: How = "told"
    words: Mapping[str, str] = field(default_factory=dict)
    least: Mm = Fraction(0)
    most: Mm = Fraction(3048)
    rank: int = 50
    seconds: int = 20
    evidence: bool = False
    after: tuple[tuple[Key, tuple[str, ...]], ...] = ()
    look: str = ""
    sign: str = ""


@dataclass(frozen=True)
class Look:
    """One look at a garment, at which several questions are answered at a glance; what is seen is asked for after it.

    `ask` is what to look at, `name` says it in a few words; `none` is the answer when nothing is to be seen.
    `seconds` is how long it takes before the first sign, `each` how long each sign takes.
    `untold`: what stands for a sign that is not seen: the usual answer, or that she cannot say.
    """

    id: str
    name: str
    ask: str
    none: str
    help: str = ""
    seconds: int = 20
    each: int = 3
    untold: Literal["usual", "unknown"] = "usual"
