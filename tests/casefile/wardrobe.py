"""What these tests share: two small garments of their own, and cases generated for them."""

from collections.abc import Callable
from fractions import Fraction
from pathlib import Path
from random import Random
from typing import TypeVar

from hypothesis import strategies as st

from advisor.casefile import Garments
from advisor.core.case import Answer, Case, Choice, Entry, Known, Limits, Record, Stood, Sums, Unknown
from advisor.core.question import Kind, Question

Thing = TypeVar("Thing")
GOLDEN = Path(__file__).parent / "golden" / "v1.toml"


def _question(key: str, kind: Kind, *words: str, most: int = 3000) -> Question:
    meanings = {word: f"it is {word}" for word in words}
    return Question(
        key=key, name=key, ask=f"{key}?", kind=kind, neutral=Fraction(0), words=meanings, most=Fraction(most)
    )


_DRESS = (
    _question("waist.sits", "word", "low", "right", "high"),
    _question("waist.low_by", "length", most=200),
    _question("waist.pinned", "pinch", most=300),
    _question("waist.round", "length"),
    _question("front.zipper_kind", "word", "coil", "metal", "invisible"),
    _question("front.zipper", "length"),
    _question("hem.depth", "length", most=400),
    _question("hem.sweep", "length"),
)
_APRON = (
    _question("bib.depth", "length"),
    _question("ties.kind", "word", "sewn", "hook and loop", 'a "bow"'),
)

GARMENTS: Garments = {
    "one_piece": {question.key: question for question in _DRESS},
    "apron": {question.key: question for question in _APRON},
}

# What people type and what trips writers up: quotes of all kinds, backslashes, number signs, foreign letters.
LETTERS = "abcxyz ABC019.,:;!?'\"\\#=[]{}@-_/é日ß½”"
_PHRASES = (
    *(
        "waist.fixes.raise_seam",
        "too_wide@trousers",
        'a fold 1/2" deep',
        "the keeper's wife",
        "it's 27 1/2\"",
    ),
    *("C:\\rail", "# no comment", "[answers.waist]", '"""', "'''", "a = { b = 1 }", "Größe 38, 日, ½ in"),
    *("true", " two  spaces ", "\\", '""""""', 'ends in "', "."),
)
MOMENTS = ("", "2026-11-25T09:30:00", "2026-02-28", "2026-11-25T09:30:00+01:00")
STEPS = tuple(map(Fraction, ("127/80", "1", "1/1000", "127/15", "1/7", "1/49")))
"""What generated lengths are multiples of, mm: marks of both tapes, thousandths, and what no tape shows."""


def _line(rng: Random) -> str:
    return rng.choice(("", rng.choice(_PHRASES), "".join(rng.choices(LETTERS, k=rng.randrange(14)))))


def _filled(rng: Random) -> str:
    line = _line(rng)
    return line if line.strip() else rng.choice(_PHRASES)


def _answer(question: Question, rng: Random) -> Answer:
    if rng.random() < 0.2:
        return Unknown(rng.choice(MOMENTS))
    step = rng.choice(STEPS)
    length = rng.randrange(int(question.most / step) + 1) * step
    value = rng.choice(sorted(question.words)) if question.kind == "word" else length
    if rng.random() < 0.3:
        return Known(value)
    return Known(value, rng.choice(("pinned", "measured", "told")), rng.choice(MOMENTS), _line(rng))


def _limits(rng: Random) -> Limits:
    weights = (Fraction(1), Fraction(rng.randrange(3001), 1000), Fraction(rng.randrange(22), 7))
    weigh = [rng.choice(weights) for _ in range(3)]
    prices = {_filled(rng): Fraction(rng.randrange(10_000), 100) for _ in range(rng.choice((0, 0, 1, 3)))}
    return Limits(
        rng.randint(1, 5),
        rng.randint(1, 5),
        *weigh,
        visible=rng.randint(1, 5),
        cutting=rng.random() < 0.7,
        buttonholes=rng.random() < 0.7,
        minutes=rng.choice((None, rng.randint(1, 600))),
        money=rng.choice((None, Fraction(rng.randrange(10_000), 100))),
        prices=tuple(sorted(prices.items())),
    )


def _record(rng: Random) -> Record:
    fixes = tuple(_several(_filled, rng))
    return Record(
        rng.choice(MOMENTS),
        *(_filled(rng) for _ in range(7)),
        totals=Sums(*(rng.randint(1, 5) for _ in range(3)), *(rng.randrange(999) for _ in range(4))),
        findings={_filled(rng): Stood(_line(rng), fixes, fixes[1:]) for _ in range(rng.randrange(4))},
        steps={_filled(rng): ((_filled(rng), "1a2b"),) * rng.randrange(3) for _ in range(rng.randrange(3))},
        cards={f"{_filled(rng)}.{rng.choice('xyz')}": _filled(rng) for _ in range(rng.randrange(4))},
    )


def _several(make: Callable[[Random], Thing], rng: Random) -> list[Thing]:
    return [make(rng) for _ in range(rng.randrange(4))]


def generated(seed: int) -> Case:
    """A case of one of the two garments, any part of it filled in; always the same for one seed."""
    rng = Random(seed)
    garment = rng.choice(sorted(GARMENTS))
    questions = GARMENTS[garment]
    asked = rng.sample(sorted(questions), rng.randrange(len(questions) + 1))
    return Case(
        garment=garment,
        title=_filled(rng),
        tape=rng.choice(("in", "cm")),
        story="\n".join(_several(_line, rng)),
        answers={key: _answer(questions[key], rng) for key in asked},
        choices={_filled(rng): Choice(_filled(rng), _line(rng), rng.choice(MOMENTS)) for _ in range(rng.randrange(4))},
        limits=rng.choice((Limits(), _limits(rng))),
        log=tuple(_several(lambda _: Entry(rng.choice(MOMENTS), _filled(rng)), rng)),
        record=_record(rng) if rng.random() < 0.4 else None,
    )


cases = st.integers(0, 2**48).map(generated)
