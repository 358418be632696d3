"""Numbers as people write them, cut out of a typed text: the part that lengths and cloth weights share.

    amount   = whole | decimal | fraction | whole gap fraction | whole sign
    whole    = digits 0 to 9
    decimal  = digits, one point or comma, digits; the digits before the point may be left out (.5)
    fraction = digits '/' digits, no spaces, less than one, more than zero
    sign     = one of the vulgar fraction signs of halves, thirds, quarters and eighths
    gap      = spaces, or one hyphen with nothing around it: 27 1/2, 27-1/2

Denominators: 2, 4, 8, 16, 32 and 64, which tapes are divided by, and 3, because yards are told in thirds
(common practice, no source). Fifths and tenths are written as decimals. A fraction must be less than one
because `31/4` is as likely `3 1/4` with its space lost as seven and three quarters.

A comma is a decimal comma, except before exactly three digits, where it may be either and is refused. A point
is always a decimal point: `3.175 mm` is an eighth of an inch, and nobody writes thousands of millimeters so.
"""

import re
import unicodedata
from dataclasses import dataclass
from difflib import get_close_matches
from fractions import Fraction
from typing import Final, Literal, cast

from advisor.lengths.refusal import LONGEST, Line, ReadingError, is_hidden

Kind = Literal["number", "fraction", "sign", "word", "quote", "dash", "other"]

SIGNS: Final = {
    "½": Fraction(1, 2), "⅓": Fraction(1, 3), "⅔": Fraction(2, 3), "¼": Fraction(1, 4), "¾": Fraction(3, 4),
    "⅛": Fraction(1, 8), "⅜": Fraction(3, 8), "⅝": Fraction(5, 8), "⅞": Fraction(7, 8),
}  # fmt: skip
DENOMINATORS: Final = frozenset({2, 3, 4, 8, 16, 32, 64})
SPACES: Final = " \u00a0\u2009\u202f"  # the no-break and thin ones come with text copied from a page

_TOKEN: Final = re.compile(
    rf"(?P<space>[{SPACES}]+)"
    "|(?P<fraction>[0-9]+[/\u2044][0-9]+)"
    "|(?P<number>[0-9]+(?:[.,][0-9]+)?|[.,][0-9]+)"
    f"|(?P<sign>[{''.join(SIGNS)}])"
    "|(?P<word>[A-Za-z]+)"
    "|(?P<quote>[\"'\u2018\u2019\u201c\u201d\u2032\u2033])"
    "|(?P<dash>[-\u2010-\u2015\u2212\ufe58\ufe63\uff0d])"
    "|(?P<other>.)",
    re.ASCII | re.DOTALL,
)
_RANGE_WORDS: Final = frozenset({"to", "or", "and", "till", "until", "between", "from"})
_VAGUE_WORDS: Final = frozenset(
    {"about", "approx", "approximately", "around", "roughly", "circa", "ca", "nearly", "almost"}
)
_KNOWN_WORDS: Final = ("inch", "inches", "foot", "feet", "yard", "yards", "centimeter", "centimeters")


@dataclass(frozen=True)
class Token:
    """A piece of the text from index `start` up to `end`."""

    kind: Kind
    text: str
    start: int
    end: int


@dataclass(frozen=True)
class Amount:
    """A number read: `whole` if it has no fraction or decimals, `after` the next token."""

    value: Fraction
    whole: bool
    start: int
    after: int


def scan(line: Line) -> list[Token]:
    """The tokens of `line`, spaces left out. Raises ReadingError for an empty or overlong text only."""
    if len(line.text) > LONGEST:
        hint = f"type one value, such as {line.example}"
        raise line.refuse(LONGEST, f"more than {LONGEST} characters", hint)
    edge = SPACES + "\t\r\n"
    start = len(line.text) - len(line.text.lstrip(edge))
    end = len(line.text.rstrip(edge))
    if start >= end:
        raise line.refuse(0, "nothing was typed", f"type a value, such as {line.example}")
    return [
        Token(cast(Kind, match.lastgroup), match.group(), match.start(), match.end())
        for match in _TOKEN.finditer(line.text, start, end)
        if match.lastgroup != "space"
    ]


def amount(line: Line, tokens: list[Token], at: int) -> Amount:
    """The number that begins at token `at`. Raises ReadingError if none does."""
    first = tokens[at]
    if first.kind in ("fraction", "sign"):
        return Amount(_part(line, first, after_whole=False), False, first.start, at + 1)
    if first.kind != "number":
        raise misplaced(line, tokens, at)
    value = _number(line, tokens, at)
    if not first.text.isdigit():
        return Amount(value, False, first.start, at + 1)
    rest = at + 2 if _hyphen_joins(tokens, at) else at + 1
    if rest < len(tokens) and tokens[rest].kind in ("fraction", "sign"):
        return Amount(value + _part(line, tokens[rest], after_whole=True), False, first.start, rest + 1)
    return Amount(value, True, first.start, at + 1)


def _hyphen_joins(tokens: list[Token], at: int) -> bool:
    """Whether a plain hyphen with no space around it ties the number at `at` to a fraction."""
    if at + 2 >= len(tokens):
        return False
    number, dash, part = tokens[at : at + 3]
    touching = number.end == dash.start and dash.end == part.start
    return touching and dash.text == "-" and part.kind in ("fraction", "sign")


def _number(line: Line, tokens: list[Token], at: int) -> Fraction:
    token = tokens[at]
    text = token.text
    if text[0] in ".," and at and tokens[at - 1].end == token.start:
        raise line.refuse(token.start, "a decimal point out of place", "a number has one decimal point: 27.5")
    whole, comma, decimals = text.partition(",")
    if comma and len(decimals) == 3:
        at_comma = token.start + len(whole)
        problem = "a comma before three digits may mean thousands or decimals"
        raise line.refuse(at_comma, problem, "leave out a comma of thousands; write decimals with a point")
    return Fraction("0" + text.replace(",", "."))


def _part(line: Line, token: Token, *, after_whole: bool) -> Fraction:
    """The value of a fraction or a vulgar fraction sign: between 0 and 1."""
    if token.kind == "sign":
        return SIGNS[token.text]
    over, slash, under = token.text.replace("\u2044", "/").partition("/")
    below = token.start + len(over) + len(slash)
    top, bottom = int(over), int(under)
    if bottom == 0:
        raise line.refuse(below, "a fraction over zero", "write it as the tape shows it, such as 1/2")
    if bottom not in DENOMINATORS:
        hint = "use halves, thirds, quarters, 8ths, 16ths, 32nds or 64ths, or a decimal such as 0.2"
        raise line.refuse(below, "no tape is divided so", hint)
    if top == 0:
        raise line.refuse(token.start, "a fraction of nothing", "leave the fraction out")
    if top >= bottom:
        kept = "after a whole number a fraction" if after_whole else "a fraction"
        hint = "write a whole number, a space and the fraction: 1 1/4 for 5/4, 3 1/4 if its space was lost"
        raise line.refuse(token.start, f"{kept} must be less than one", hint)
    return Fraction(top, bottom)


def misplaced(line: Line, tokens: list[Token], at: int) -> ReadingError:
    """The refusal of token `at`, which cannot stand where it stands."""
    token = tokens[at]
    if token.kind in ("number", "fraction", "sign"):
        if token.kind == "number":
            _number(line, tokens, at)  # a misplaced point or comma is the better thing to say
        hint = f"type one value, such as {line.example}"
        return line.refuse(token.start, "a second number with no unit between", hint)
    if token.kind == "quote":
        hint = f"the number comes first, then its unit: {line.example}"
        return line.refuse(token.start, "an inch or foot mark out of place", hint)
    if token.kind == "dash":
        return _dash(line, tokens, at)
    if token.kind == "word":
        return _word(line, tokens, at)
    return _other(line, token)


def _dash(line: Line, tokens: list[Token], at: int) -> ReadingError:
    dash = tokens[at]
    before = tokens[at - 1] if at else None
    after = tokens[at + 1] if at + 1 < len(tokens) else None
    if before is None:
        return line.refuse(dash.start, "a minus sign", "leave it out: no length or weight is below zero")
    if after and before.end < dash.start and dash.end == after.start:
        hint = "for a whole number and a fraction write 27 1/2 or 27-1/2"
        return line.refuse(dash.start, "a minus sign, or a hyphen with a space before it", hint)
    if after and after.kind in ("number", "fraction", "sign"):
        return _range(line, dash)
    return line.refuse(dash.start, "a dash out of place", "leave it out; a hyphen only joins 27-1/2")


def _range(line: Line, token: Token) -> ReadingError:
    hint = "measure again and type one value; if it cannot be measured, answer that you cannot say"
    return line.refuse(token.start, "this reads as a range", hint)


def _word(line: Line, tokens: list[Token], at: int) -> ReadingError:
    token = tokens[at]
    word = token.text.lower()
    if word in _RANGE_WORDS:
        return _range(line, token)
    if word in _VAGUE_WORDS:
        hint = "leave the word out; if it cannot be measured, answer that you cannot say"
        return line.refuse(token.start, "an estimate, not a measure", hint)
    if word in ("nan", "inf", "infinity"):
        return line.refuse(token.start, "not a number", f"type one in digits, such as {line.example}")
    if word == "e" and at and tokens[at - 1].end == token.start:
        return line.refuse(token.start, "a power of ten", "write the number out in digits")
    close = get_close_matches(word, _KNOWN_WORDS, n=1, cutoff=0.7)
    hint = f"did you mean '{close[0]}'?" if close else f"type it like this: {line.example}"
    return line.refuse(token.start, "a word that is no unit here", hint)


def _other(line: Line, token: Token) -> ReadingError:
    char = token.text
    for chars, problem, hint in _STRAY:
        if char in chars:
            return line.refuse(token.start, problem, hint)
    if unicodedata.decomposition(char).startswith("<fraction>"):
        hint = "use halves, thirds, quarters or eighths, or a decimal such as 0.2"
        return line.refuse(token.start, "no tape is divided so", hint)
    if char.isnumeric():
        return line.refuse(token.start, "a digit other than 0 to 9", "type the number with the digits 0 to 9")
    if is_hidden(char):
        return line.refuse(token.start, "a character that cannot be seen", "delete it, or type it all again")
    return line.refuse(token.start, "a sign that has no place here", f"type it like this: {line.example}")


_STRAY: Final = (
    ("/\u2044", "a slash out of place", "write a fraction without spaces, such as 1/2"),
    (".,", "a point or comma with no digit after it", "write 27 or 27.5"),
    ("+", "a plus sign", "write the parts one after the other: 1 yd 4 in"),
    ("~≈±", "an estimate, not a measure", "leave the sign out and type one value"),
)
