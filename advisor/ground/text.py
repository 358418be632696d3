"""The one gate for text: nothing reaches a screen, list, error, log or export except through here.

A case file, a file name or the words of an exception may hold bytes that a terminal obeys instead of
showing: it can be renamed, made to type, or made to show a line backwards. What is refused or shown as U+FFFD
here: C0 and C1 controls and DEL (ECMA-48), halves of surrogate pairs, every character of general category Cf
(so all twelve of the Bidi_Control property, UAX #9), line and paragraph separators, noncharacters, and the
letters that Unicode marks as Default_Ignorable, which take no room. Accented letters of all scripts stay.
What this costs: joiners (U+200C, U+200D) are lost, so a joined emoji falls apart and some Indic and Persian
spelling is shown unjoined.
"""

import re
import unicodedata

from advisor.errors import AdvisorError, CaseError

REPLACEMENT = "\N{REPLACEMENT CHARACTER}"
ELLIPSIS = "\N{HORIZONTAL ELLIPSIS}"
LINE_LIMIT = 10_000
"""Most characters in a text of one line."""
TEXT_LIMIT = 1_000_000
"""Most characters in a text of several lines."""
MARK_LIMIT = 4
"""Most combining marks on one letter; pointed scripts need three, a run of thousands hides its neighbors."""

_KIND = {
    "Cc": "a control character",
    "Cf": "an invisible character that changes how its neighbors are shown",
    "Cs": "half of a character (an unpaired surrogate)",
    "Zl": "a line separator",
    "Zp": "a paragraph separator",
}
# Default_Ignorable_Code_Point without being Cf or a variation selector (DerivedCoreProperties, from memory).
_NO_WIDTH = frozenset({0x034F, 0x115F, 0x1160, 0x17B4, 0x17B5, 0x3164, 0xFFA0})


_SPACE = re.compile(r"[ \t\r\n]+")


def _kind(char: str) -> str:
    """In words, why `char` may not be shown; empty for one that may."""
    code = ord(char)
    if code in _NO_WIDTH:
        return "a letter that takes no room"
    if 0xFDD0 <= code <= 0xFDEF or code & 0xFFFE == 0xFFFE:
        return "a code that Unicode sets aside and no text may hold"
    return _KIND.get(unicodedata.category(char), "")


class _Table(dict[int, str]):
    """For `str.translate`; learns each code point when first met, as listing all of them costs 0.2 s."""

    def __missing__(self, code: int) -> str:
        self[code] = REPLACEMENT if _kind(chr(code)) else chr(code)
        return self[code]


_SHOWN = _Table()
_SHOWN_LINES = _Table({0x09: "\t", 0x0A: "\n"})


def _is_mark(char: str) -> bool:
    # Conjoining vowels and finals of Hangul are letters by category, yet pile up without limit like marks.
    jamo = "\u1160" <= char <= "\u11ff" or "\ud7b0" <= char <= "\ud7ff"
    return jamo or unicodedata.category(char)[0] == "M"


def _cap_marks(text: str) -> str:
    """`text` without the marks beyond MARK_LIMIT on one letter."""
    if text.isascii():
        return text
    kept: list[str] = []
    run = 0
    for char in text:
        run = run + 1 if _is_mark(char) else 0
        if run <= MARK_LIMIT:
            kept.append(char)
    return "".join(kept)


def _limit(newlines: bool, limit: int | None) -> int:
    if limit is not None:
        return limit
    return TEXT_LIMIT if newlines else LINE_LIMIT


def clean(text: str, *, newlines: bool = False, limit: int | None = None) -> str:
    """`text` made safe to show: each refused character becomes U+FFFD, never an error.

    newlines: keep newline and tab (and turn CR LF into a newline); otherwise they count as controls.
    limit: most characters kept, the rest is cut and the last one kept is an ellipsis; by default LINE_LIMIT,
    or TEXT_LIMIT with `newlines`. Cleaning twice changes nothing.
    """
    cap = _limit(newlines, limit)
    cut = len(text) > 4 * cap
    if cut:  # bounds the work on a hostile text
        text = text[: 4 * cap]
    if newlines:
        text = text.replace("\r\n", "\n")
    text = _cap_marks(text.translate(_SHOWN_LINES if newlines else _SHOWN))
    if cut or len(text) > cap:
        return text[: max(cap - 1, 0)] + (ELLIPSIS if cap > 0 else "")
    return text


def line(text: str, width: int | None = None) -> str:
    """`text` as one clean line, whatever it held: newlines and tabs become spaces, runs of space one.

    width: most terminal cells it may take; what is cut off is shown as an ellipsis.
    """
    flat = clean(_SPACE.sub(" ", text).strip(" "))
    return flat if width is None else _fit(flat, width)


def cells(text: str) -> int:
    """How many terminal cells `text` takes: wide East Asian letters two, combining marks none."""
    return sum(map(_cell, text))


def _cell(char: str) -> int:
    if _is_mark(char) and unicodedata.category(char) != "Mc":
        return 0
    return 2 if unicodedata.east_asian_width(char) in "WF" else 1


def _fit(text: str, width: int) -> str:
    if cells(text) <= width:
        return text
    kept: list[str] = []
    room = width - 1
    for char in text:
        room -= _cell(char)
        if room < 0:
            break
        kept.append(char)
    return "".join(kept) + (ELLIPSIS if width > 0 else "")


def is_clean(text: str, *, newlines: bool = False, limit: int | None = None) -> bool:
    """Whether `clean` would hand back `text` unchanged."""
    return clean(text, newlines=newlines, limit=limit) == text


def check_text(
    text: str,
    where: str,
    *,
    newlines: bool = False,
    limit: int | None = None,
    error: type[AdvisorError] = CaseError,
) -> str:
    """`text` itself when it is clean.

    Raises `error` (CaseError unless told otherwise) at `where`, naming the first bad character by code point
    and by its place, counted from 1.
    """
    if is_clean(text, newlines=newlines, limit=limit):
        return text
    what, hint = _fault(text, newlines, _limit(newlines, limit))
    raise error(what, where=line(where, 200), hint=hint)


def _fault(text: str, newlines: bool, limit: int) -> tuple[str, str]:
    """What is wrong with a text that is not clean, and what to do about it."""
    if len(text) > limit:
        return f"the text has {len(text)} characters; at most {limit} are kept", "shorten it"
    run = 0
    for at, char in enumerate(text):
        run = run + 1 if _is_mark(char) else 0
        code = f"U+{ord(char):04X}"
        if run > MARK_LIMIT:
            what = f"more than {MARK_LIMIT} marks on one letter, from {code} at {_place(text, at)}"
            return what, "delete the extra marks"
        kind = _kind(char)
        if kind and not (newlines and char in "\n\t"):
            return f"{kind}, {code}, at {_place(text, at)}", "delete that character, or type the text again"
    raise AssertionError("a text that is not clean has a first fault")


def _place(text: str, at: int) -> str:
    row = text.count("\n", 0, at) + 1
    column = at - (text.rfind("\n", 0, at) + 1) + 1
    return f"line {row}, character {column}" if "\n" in text else f"character {column}"
