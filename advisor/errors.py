"""Everything the advisor refuses, as one family.

    AdvisorError             any refusal the person can act on: exit code 2, never a traceback
    |-- LengthError          a length that cannot be read, or cannot be true
    |-- CaseError            a case file that is malformed, unknown or of a newer version
    |-- KnowledgeError       a rule, fix, garment or source file that is wrong
    |-- SaveError            a file that could not be written; the work is kept
    `-- UsageError           a command or key that does not exist

Each says what is wrong, where, and what to do next. No message carries a body measure.
"""

from collections.abc import Iterable
from difflib import get_close_matches


class AdvisorError(Exception):
    """A refusal: `what` is wrong, `where` it stands, and `hint`, what to do about it."""

    def __init__(self, what: str, *, where: str = "", hint: str = "") -> None:
        super().__init__(what)
        self.what = what
        self.where = where
        self.hint = hint

    def __str__(self) -> str:
        place = f"{self.where}: " if self.where else ""
        advice = f"\n  {self.hint}" if self.hint else ""
        return f"{place}{self.what}{advice}"


class LengthError(AdvisorError):
    """A length that cannot be read, or that no garment or body has."""


class CaseError(AdvisorError):
    """A case file that cannot be trusted as it stands."""


class KnowledgeError(AdvisorError):
    """A file of the rule base that is wrong; the author must mend it."""


class SaveError(AdvisorError):
    """A file that could not be written. What was there before is untouched, unless the message says otherwise."""


class UsageError(AdvisorError):
    """A command, key or name that does not exist."""


def nearest(word: str, known: Iterable[str]) -> str:
    """A hint naming the known word nearest to `word`, or the known words if none is near."""
    known = sorted(known)
    close = get_close_matches(word, known, n=1, cutoff=0.6)
    if close:
        return f"did you mean '{close[0]}'?"
    shown = ", ".join(known[:8]) + (", ..." if len(known) > 8 else "")
    return f"known here: {shown}" if known else ""
