"""From a text to plain values: size, TOML syntax, and the check of every string, before all else."""

import re
import tomllib
from collections.abc import Iterator
from fractions import Fraction
from typing import Any

from advisor.casefile.lines import Path, has_deep_key, row_of
from advisor.errors import CaseError
from advisor.ground import SIZE_CAP, check_text, is_clean, line

_SEVERAL_LINES = "story"

_PLAIN_NUMBER = re.compile(r"[+-]?[0-9]{1,12}\.[0-9]{1,12}", re.ASCII)
_PLACE = re.compile(r" \(at (?:line (\d+), column (\d+)|end of document)\)$")

# What the standard reader says, and how to say it to somebody who edits the file by hand.
_SAID: tuple[tuple[str, str, str], ...] = (
    (
        "Expected newline or end of document",
        "something follows where the line should end",
        'an inch mark inside double quotes ends the text: write \'27 1/2"\' or "27 1/2 in"',
    ),
    ("Cannot overwrite", "a name is given twice", "keep one of the two lines and delete the other"),
    ("Cannot redefine", "a name is given twice", "keep one of the two lines and delete the other"),
    ("Cannot declare", "a table is begun twice", "put its lines under one header"),
    ("Cannot mutate", "a table is written in two ways", "write all of it in one place"),
    ("Duplicate inline", "a name is given twice", "keep one of the two and delete the other"),
    ("Invalid value", "this is no value", 'put words and lengths in quotes, such as "low" or "1 1/2 in"'),
    ("Expected '='", "a name has no value", 'write name = "value"; a name with spaces or @ needs quotes'),
    ("Unclosed inline", "a { is not closed, or its lines are broken", "close it with } on the same line"),
    ("Unclosed array", "a [ is not closed", "close it with ]"),
    ("Unterminated string", "a text in quotes is not closed", "add the closing quote"),
    ("Expected ''", "a text in single quotes is not closed", "add the closing quote"),
    ("Expected \"'", "a text in single quotes is not closed", "add the closing quote"),
    ("Unescaped", "a backslash in double quotes", "write it twice, or put the text in single quotes"),
    ("Expected ']", "a header is not closed", "write [name] on a line of its own, or [[log]]"),
    ("Illegal character '\\n'", "a text in quotes is not closed on its line", "add the closing quote"),
    ("Illegal character", "a control character", "delete it; it may be invisible"),
    ("Found invalid character", "a control character", "delete it; it may be invisible"),
    (
        "Invalid initial",
        "a name that cannot be",
        "put a name in quotes unless it is all letters, digits, - and _",
    ),
    ("Invalid statement", "this line is neither a name nor a header", 'write name = "value" or [name]'),
)


def load(text: str, where: str) -> dict[str, Any]:
    """The plain values of a TOML text; numbers written out with a point are Fractions, all others with
    a point or an exponent NaN, which nothing in a case may be.

    Raises CaseError for a text that is too long, no TOML, or holds a string that must not reach a screen.
    """
    if len(text) > SIZE_CAP or len(text.encode(errors="replace")) > SIZE_CAP:
        what = f"the text is larger than {SIZE_CAP:,} bytes, more than any case needs"
        raise CaseError(what, where=where, hint="check that it is the right file, or shorten the log")
    if has_deep_key(text):
        what = "a name with far more dots than any in a case"
        raise CaseError(what, where=where, hint="check that it is the right file")
    try:
        raw = tomllib.loads(text, parse_float=_number)
    except tomllib.TOMLDecodeError as fault:
        raise _explained(str(fault), text, where) from None
    except RecursionError:
        what = "brackets are nested far deeper than in any case"
        raise CaseError(what, where=where, hint="check that it is the right file") from None
    except ValueError:
        what = "a number with more digits than any number of a case"
        raise CaseError(what, where=where, hint="look for a long row of digits") from None
    _check_strings(raw, text, where)
    return raw


def _number(text: str) -> Fraction | float:
    # A Fraction of 1e999999999 would fill the memory, so only numbers written out are made exact.
    plain = text.replace("_", "")
    return Fraction(plain) if _PLAIN_NUMBER.fullmatch(plain) else float("nan")


def _explained(said: str, text: str, where: str) -> CaseError:
    place = _PLACE.search(said)
    cause = said[: place.start()] if place else said
    row = int(place[1]) if place and place[1] else text.rstrip().count("\n") + 1
    column = f", character {place[2]}" if place and place[2] else ""
    for beginning, what, hint in _SAID:
        if cause.startswith(beginning):
            return CaseError(what, where=f"{where}, line {row}{column}", hint=hint)
    what = f"this line cannot be read ({line(cause, 100)})"
    return CaseError(what, where=f"{where}, line {row}{column}", hint='lines look like this: name = "value"')


def _check_strings(raw: dict[str, Any], text: str, where: str) -> None:
    for path, words in _strings(raw):
        newlines = path[-1] == _SEVERAL_LINES
        if not is_clean(words, newlines=newlines):
            named = ".".join(str(part) for part in path if part != "name")
            check_text(words, f"{at_row(text, path, where)}, {named}", newlines=newlines)


def _strings(raw: dict[str, Any]) -> Iterator[tuple[Path, str]]:
    """Every string, names included, with its path. No recursion: the nesting is the file's choice."""
    waiting: list[tuple[Path, Any]] = [((), raw)]
    while waiting:
        path, value = waiting.pop()
        if isinstance(value, str):
            yield path, value
        elif isinstance(value, dict):
            for name, inner in value.items():
                yield (*path, name, "name"), name
                waiting.append(((*path, name), inner))
        elif isinstance(value, list):
            waiting += [((*path, index), inner) for index, inner in enumerate(value)]


def at_row(text: str, path: Path, where: str) -> str:
    """`where`, with the line of `path` if it can be told."""
    row = row_of(text.replace("\r\n", "\n"), path)
    return f"{where}, line {row}" if row else where
