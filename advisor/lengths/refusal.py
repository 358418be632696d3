"""The refusal of a typed text: which text, at which character, why, and what to type instead."""

import unicodedata
from dataclasses import dataclass

from advisor.errors import LengthError

LONGEST = 60
"""Characters a typed length may have; `5 ft 4 1/2 in` has 13, so anything longer is a pasted mistake."""


class ReadingError(LengthError):
    """A typed text that was refused.

    text:   what was typed, made safe to print: every control or invisible character is U+FFFD, and it is
            cut after 60 characters.
    column: the offending character, counted from 1; one past the end if something is missing there.

    Only `text`, `picture` and `str()` repeat what was typed. `what`, `where` and `hint` never do, so those
    three may go where a body measure may not.
    """

    def __init__(
        self, what: str, *, where: str = "", hint: str = "", text: str = "", column: int = 1
    ) -> None:
        super().__init__(what, where=where, hint=hint)
        self.text = text
        self.column = column

    @property
    def picture(self) -> str:
        """Two lines: the text, and a caret under the offending character."""
        return f"{self.text}\n{' ' * _cells(self.text[: self.column - 1])}^"

    def __str__(self) -> str:
        drawn = "\n".join(f"  {line}" for line in self.picture.split("\n"))
        return f"{self.where}: {self.what}\n{drawn}\n  {self.hint}"


@dataclass(frozen=True)
class Line:
    """A typed text under reading: `what` names the asked value, `example` shows a right answer."""

    text: str
    what: str
    example: str

    def refuse(self, at: int, problem: str, hint: str) -> ReadingError:
        """The error for the character at index `at` (from 0); the caller raises it."""
        return ReadingError(
            problem,
            where=f"{self.what}, character {at + 1}",
            hint=hint,
            text=_printable(self.text),
            column=at + 1,
        )


def is_hidden(char: str) -> bool:
    """Whether `char` shows nothing or steers the terminal: controls, format marks, odd separators."""
    return unicodedata.category(char)[0] in "CZ" and char != " "


def _printable(text: str) -> str:
    cut = text[:LONGEST] + ("..." if len(text) > LONGEST else "")
    return "".join("\N{REPLACEMENT CHARACTER}" if is_hidden(char) else char for char in cut)


def _cells(text: str) -> int:
    """Terminal columns `text` takes: wide characters two, combining marks none."""
    marks = sum(unicodedata.category(char) in ("Mn", "Me") for char in text)
    wide = sum(unicodedata.east_asian_width(char) in "WF" for char in text)
    return len(text) - marks + wide
