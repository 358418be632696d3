"""What a check finds: where, what is wrong and what to do; and the book in which one check writes it down."""

from collections.abc import Iterator
from dataclasses import dataclass, field


@dataclass(frozen=True, order=True)
class Fault:
    """One thing found. `where` is a file below the checkout (rules/..., cases/...), `line` 0 where unknown.

    A `note` asks to be looked at; anything else is an error.
    """

    where: str
    line: int
    what: str
    hint: str
    note: bool = False
    check: str = ""

    def told(self) -> str:
        """`rules/x/findings/y.py:12: what is wrong; hint`."""
        place = f"{self.where}:{self.line}" if self.line else self.where
        return f"{place}: {self.what}; {self.hint}" if self.hint else f"{place}: {self.what}"


@dataclass
class Book:
    """Where one check writes what it finds. The same thing said twice is kept once."""

    check: str
    faults: dict[Fault, None] = field(default_factory=dict)

    def error(self, where: str, what: str, hint: str, line: int = 0) -> None:
        """Something that must be mended."""
        self.faults.setdefault(Fault(where, line, what, hint, False, self.check))

    def note(self, where: str, what: str, hint: str = "", line: int = 0) -> None:
        """Something to look at."""
        self.faults.setdefault(Fault(where, line, what, hint, True, self.check))

    def __iter__(self) -> Iterator[Fault]:
        return iter(self.faults)
