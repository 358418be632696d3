"""Wrapping sentences into lines, without borders or color: right for a screen reader and for a pipe."""

from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from contextvars import ContextVar
from textwrap import wrap

from advisor.ground import clean

WIDTH = 78
_width: ContextVar[int] = ContextVar("width", default=WIDTH)


@contextmanager
def wrapped_at(width: int) -> Iterator[None]:
    """All paragraphs made meanwhile are `width` characters wide: a screen has its own idea of that."""
    token = _width.set(width)
    try:
        yield
    finally:
        _width.reset(token)


def width_now() -> int:
    """How wide paragraphs are made now."""
    return _width.get()


def para(text: str, indent: int = 0, first: str = "", width: int = 0) -> list[str]:
    """One paragraph, indented; `first` opens it (a number, a dash) and hangs out. `width` 0: the usual one."""
    width = width or _width.get()
    pad = " " * indent
    opening = pad + first
    return wrap(
        clean(text), width, initial_indent=opening, subsequent_indent=" " * len(opening), break_on_hyphens=False
    ) or ([opening] if first else [])


def bullets(items: Iterable[str], indent: int = 2, width: int = 0) -> list[str]:
    """A list, one dash each."""
    return [line for item in items for line in para(item, indent, "- ", width)]


def heading(text: str) -> list[str]:
    """A heading with a blank line before it."""
    return ["", *para(text), "-" * min(len(text), _width.get())]
