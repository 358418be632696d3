"""Beginning a case line by line, or going on with one that is there."""

import os
from collections.abc import Callable
from pathlib import Path

from advisor.casefile import new_case
from advisor.errors import AdvisorError, UsageError, nearest
from advisor.ground import clean, new_path, user_folders
from advisor.interview.session import Session
from advisor.lengths import TAPES
from advisor.rulebase.base import RuleBase

TAPE_WORDS = {"in": "inches", "cm": "centimeters"}


def cases_folder() -> Path:
    """Where cases begun without a file name are kept."""
    return user_folders().data / "cases"


def begin(base: RuleBase, path: Path | None, read: Callable[[], str], write: Callable[[str], None]) -> Session:
    """The session for `path`: opened if the file is there, else begun by asking title, garment and tape."""
    if path is not None:
        if _there(path):
            return Session.open(base, path)
        if not os.path.isdir(path.parent):
            raise UsageError("there is no such folder", where=str(path.parent), hint="make it, or leave it out")
    title = _titled(read, write)
    garment = _pick({id: g.title for id, g in sorted(base.garments.items())}, "Which garment is it?", read, write)
    tape = _pick({name: TAPE_WORDS[name] for name in TAPES}, "Which tape do you use?", read, write)
    if path is None:
        path = new_path(cases_folder(), title, ".toml")
        write(f"It is kept in {path}.")
    session = Session(base, path, new_case(title, garment, tape))
    session.save()
    return session


def _there(path: Path) -> bool:
    """Whether there is something to open at `path`, or something that opening it explains better."""
    try:
        os.stat(path)
    except (FileNotFoundError, NotADirectoryError):
        return False
    except OSError:
        pass
    return True


def _titled(read: Callable[[], str], write: Callable[[str], None]) -> str:
    """A title that a case may have, asked for until there is one."""
    write("A new case. What shall it be called?")
    while True:
        title = read().strip() or "A garment without a name"
        try:
            return new_case(title, "", next(iter(TAPES))).title
        except AdvisorError as fault:
            write(clean(str(fault), newlines=True))


def _pick(choices: dict[str, str], ask: str, read: Callable[[], str], write: Callable[[str], None]) -> str:
    """One of `choices` by number or name; a single one is taken without asking."""
    names = list(choices)
    if len(names) == 1:
        return names[0]
    write(ask)
    for number, name in enumerate(names, 1):
        write(f"  {number} {choices[name]}")
    while True:
        text = read().strip()
        try:
            return _picked(names, text)
        except AdvisorError as fault:
            write(clean(str(fault), newlines=True))


def _picked(names: list[str], text: str) -> str:
    if text.isdecimal() and 1 <= int(text) <= len(names):
        return names[int(text) - 1]
    if text in names:
        return text
    raise UsageError(f"'{text}' is not one of them", hint=nearest(text, names))
