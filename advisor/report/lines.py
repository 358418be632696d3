"""Wrapping sentences into lines, without borders or color: right for a screen reader and for a pipe."""

from collections.abc import Iterable
from textwrap import wrap

from advisor.ground import clean

WIDTH = 78


def para(text: str, indent: int = 0, first: str = "", width: int = WIDTH) -> list[str]:
    """One paragraph, indented; `first` opens it (a number, a dash) and hangs out."""
    pad = " " * indent
    opening = pad + first
    return wrap(
        clean(text), width, initial_indent=opening, subsequent_indent=" " * len(opening), break_on_hyphens=False
    ) or ([opening] if first else [])


def bullets(items: Iterable[str], indent: int = 2, width: int = WIDTH) -> list[str]:
    """A list, one dash each."""
    return [line for item in items for line in para(item, indent, "- ", width)]


def heading(text: str) -> list[str]:
    """A heading with a blank line before it."""
    return ["", clean(text), "-" * min(len(text), WIDTH)]
