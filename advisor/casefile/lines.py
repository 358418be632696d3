"""Where things stand in a TOML text: its statements, with their paths, lines and value spans.

The standard reader tells the place of broken syntax, but not the place of a value it has read, which both a
helpful error and an edit that leaves all other lines alone need. These functions are only given text that the
standard reader has accepted, so they tell statements apart and check nothing.
"""

import re
import tomllib
from collections.abc import Iterator
from dataclasses import dataclass, field

Path = tuple[str | int, ...]
"""The keys that lead to a value, outermost first; a whole number counts the tables of an array from 0."""

# The loops are unrolled, as a text of a million characters must not cost a million steps back.
_BASIC = r'"[^"\\\n]*(?:\\.[^"\\\n]*)*"'
_LONG = r'"""[^"\\]*(?:(?:\\.|"{1,2}(?!"))[^"\\]*)*"{3,5}'
_LONG_LITERAL = r"'''[^']*(?:'{1,2}(?!')[^']*)*'{3,5}"
_STRING = rf"{_LONG}|{_LONG_LITERAL}|{_BASIC}|'[^'\n]*'"
_TOKEN = re.compile(
    rf"(?P<string>{_STRING})|(?P<comment>#[^\n]*)|(?P<open>[\[{{])|(?P<close>[\]}}])|(?P<end>\n)"
    r"|(?P<other>[^\"'#\[\]{}\n]+)",
    re.DOTALL,
)
_PART = rf"{_BASIC}|'[^'\n]*'|[A-Za-z0-9_-]+"
_EACH_PART = re.compile(_PART)
_KEY = re.compile(rf"[ \t]*(?:{_PART})(?:[ \t]*\.[ \t]*(?:{_PART}))*[ \t]*")


@dataclass(frozen=True)
class Statement:
    """A header or a key with its value. Offsets count characters from 0.

    `path` is whole (header and key), `header` that of the table it stands in, or its own for a header.
    `start` to `end` are its lines with the last line break; `value` is the span of its value, None for a
    header.
    """

    path: Path
    header: Path
    start: int
    end: int
    row: int
    value: tuple[int, int] | None

    def under(self, path: Path) -> bool:
        """Whether it gives the value at `path`, or a part of that value."""
        return self.path[: len(path)] == path


@dataclass
class _Scan:
    """The statements read so far, the table they stand in, and how often each array has been begun."""

    text: str
    header: Path = ()
    begun: dict[Path, int] = field(default_factory=dict)

    def statement(self, start: int, end: int, last: int, row: int) -> Statement:
        """The statement on the lines from `start` to `end`; its value or header closes at `last`."""
        lead = start + len(self.text[start:end]) - len(self.text[start:end].lstrip())
        if self.text[lead] == "[":
            self.header = self._header(self.text[lead:last])
            return Statement(self.header, self.header, start, end, row, None)
        key = _KEY.match(self.text, start, end)
        assert key, "the standard reader lets nothing else through"
        begin = key.end() + 1
        begin += len(self.text[begin:last]) - len(self.text[begin:last].lstrip())
        return Statement(self.header + _parts(key.group()), self.header, start, end, row, (begin, last))

    def _header(self, text: str) -> Path:
        path: Path = _parts(text)
        if not text.startswith("[["):
            return path
        self.begun[path] = self.begun.get(path, -1) + 1
        return (*path, self.begun[path])


def _parts(text: str) -> tuple[str, ...]:
    return tuple(_plain(part) for part in _EACH_PART.findall(text))


def _plain(part: str) -> str:
    if part[0] not in "\"'":
        return part
    if "\\" not in part or part[0] == "'":
        return part[1:-1]
    return str(tomllib.loads(f"key = {part}")["key"])


def statements(text: str) -> Iterator[Statement]:
    """The statements of `text`, a valid TOML document with line feeds, from top to bottom."""
    scan = _Scan(text)
    start, last, row, first_row, depth, empty = 0, 0, 1, 1, 0, True
    for token in _TOKEN.finditer(text + "\n"):
        kind, words = token.lastgroup, token.group()
        depth += (kind == "open") - (kind == "close")
        if kind != "comment" and not words.isspace():
            empty, last = False, token.start() + len(words.rstrip())
        row += words.count("\n")
        if kind == "end" and depth == 0:
            if not empty:
                yield scan.statement(start, min(token.end(), len(text)), last, first_row)
            start, first_row, empty = token.end(), row, True


def comments(text: str) -> list[str]:
    """The comments of `text`, a valid TOML document, each from its number sign to the end of its line."""
    return [token.group().rstrip() for token in _TOKEN.finditer(text) if token.lastgroup == "comment"]


_DEEP_KEY = re.compile(r"(?<![A-Za-z0-9_-])(?:(?:[A-Za-z0-9_-]++|\"\")[ \t]*+\.[ \t]*+){32}")


def has_deep_key(text: str) -> bool:
    """Whether `text`, valid or not, has a dotted key of more than 32 parts, strings and comments apart.

    The standard reader takes time by the square of their number: 1,600 parts took 0.035 s, which makes an
    hour for a file of 1 MB.
    """
    if text.count(".") < 32:
        return False
    tokens = [token for token in _TOKEN.finditer(text) if token.lastgroup != "comment"]
    kept = ('""' if token.lastgroup == "string" else token.group() for token in tokens)
    return _DEEP_KEY.search("".join(kept)) is not None


def row_of(text: str, path: Path) -> int | None:
    """The line, counted from 1, where the value at `path` begins, or where the nearest table around it does.

    None if not even the outermost key is written, and for the empty path.
    """
    if not path:
        return None
    found: dict[int, int] = {}
    for statement in statements(text):
        depth = len(path) if statement.under(path) else len(statement.path)
        if path[:depth] == statement.path[:depth]:
            found.setdefault(depth, statement.row)
    found.pop(0, None)
    return found[max(found)] if found else None
