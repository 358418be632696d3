"""Changing single values of a TOML text and leaving every other line as it is, byte for byte.

Not left to tomlkit (0.15.2 tried): it is exact when it replaces a value, but a key or table it adds goes
below the comments that introduce the next header and sticks to that header, and a table added beside dotted
keys at the top swallowed the keys that followed. Here new lines go right after the last line of their table.
The caller reads the result back before trusting it.
"""

import re
import tomllib
from collections.abc import Mapping

from advisor.casefile.lines import Path, Statement, statements
from advisor.casefile.notation import Node, inline, key

SECTIONS = ("answers", "choices", "limits", "record", "log")
"""The tables of a case file, in the order a new one has them."""

_NOTES = re.compile(r"(?:[ \t]*#[^\n]*(?:\n|\Z))*")


class Page:
    """A valid TOML text with line feeds, under edit; `whole` is what all of it shall say."""

    def __init__(self, text: str, whole: Mapping[str, Node]) -> None:
        self.text = text
        self.whole = whole

    def put(self, path: Path, node: Node) -> None:
        """Let the value at `path` be `node`, in the way of writing that the text has for it."""
        there = list(statements(self.text))
        around = _around(there, path)
        if around:
            self._replace(around, inline(self._part(around.path)))
        elif any(statement.under(path) for statement in there):
            self._spread(path, node if isinstance(node, Mapping) else {"value": node})
        else:
            self._add(there, path, inline(node))

    def drop(self, path: Path) -> None:
        """Take out the lines that give the value at `path`; comments on lines of their own stay."""
        there = list(statements(self.text))
        around = _around(there, path)
        if around and around.path != path:
            self._replace(around, inline(self._part(around.path)))
            return
        for statement in reversed([each for each in there if each.under(path)]):
            self.text = self.text[: statement.start] + self.text[statement.end :]

    def append(self, rows: str) -> None:
        """Add `rows` at the end, after a blank line."""
        self.text = self.text.rstrip("\n") + "\n\n" + rows

    def _part(self, path: Path) -> Node:
        node: Node = self.whole
        for name in path:
            node = node.get(str(name), {}) if isinstance(node, Mapping) else {}
        return node

    def _replace(self, statement: Statement, new: str) -> None:
        assert statement.value
        start, end = statement.value
        if tomllib.loads(f"v = {self.text[start:end]}") != tomllib.loads(f"v = {new}"):
            self.text = self.text[:start] + new + self.text[end:]

    def _spread(self, path: Path, members: Mapping[str, Node]) -> None:
        """Put the members of a table whose members stand on lines of their own."""
        for name in {str(each.path[len(path)]) for each in statements(self.text) if _inside(each, path)}:
            if name not in members:
                self.drop((*path, name))
        for name, node in members.items():
            self.put((*path, name), node)

    def _add(self, there: list[Statement], path: Path, value: str) -> None:
        parent = path[:-1]
        rows = [each for each in there if each.header == parent]
        dotted = [each for each in there if _inside(each, parent) and len(each.header) < len(parent)]
        if rows:
            self._insert(rows[-1].end, f"{key(path[-1])} = {value}\n")
        elif dotted:
            short = path[len(dotted[-1].header) :]
            self._insert(dotted[-1].end, f"{key(*short)} = {value}\n")
        else:
            self._insert_table(there, parent, f"[{key(*parent)}]\n{key(path[-1])} = {value}\n")

    def _insert(self, at: int, rows: str) -> None:
        broken = "" if self.text[:at].endswith("\n") or not at else "\n"
        self.text = self.text[:at] + broken + rows + self.text[at:]

    def _insert_table(self, there: list[Statement], path: Path, rows: str) -> None:
        """Put a new table after those of its section, or after the sections that come before its own."""
        at = 0
        before = SECTIONS[: SECTIONS.index(str(path[0])) + 1]
        kin = [each for each in there if each.under(path[:1])] or [
            each for each in there if each.header == () or each.path[0] in before
        ]
        if kin:
            at = max(each.end for each in there if each.header == kin[-1].header)
            at = self._past_notes(at)
        follows = self.text[at : at + 1] not in ("", "\n")
        self._insert(at, ("\n" if at else "") + rows + ("\n" if follows else ""))

    def _past_notes(self, at: int) -> int:
        """Past the comments at `at`, unless they lead straight to the next header and so belong to it."""
        notes = _NOTES.match(self.text, at)
        end = notes.end() if notes else at
        return end if self.text[end : end + 1] in ("", "\n") else at


def _inside(statement: Statement, path: Path) -> bool:
    return statement.under(path) and len(statement.path) > len(path)


def _around(there: list[Statement], path: Path) -> Statement | None:
    """The one line that gives the value at `path`, alone or as a part of an inline table."""
    for statement in there:
        if statement.value and path[: len(statement.path)] == statement.path:
            return statement
    return None
