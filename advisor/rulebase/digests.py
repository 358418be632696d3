"""Digests of what advice rests on: each card, the garment files, the calculations, and all of it together.

A digest is of what a file says and not of how it is laid out: comments, spacing, the order of the files and the
version of Python leave it as it is, and so do the examples of a card. Python is read as its syntax tree, TOML as its
values.
"""

import ast
import json
from collections.abc import Iterable, Iterator, Mapping
from functools import lru_cache
from hashlib import sha256
from pathlib import Path
from typing import Any

from advisor.errors import KnowledgeError
from advisor.rulebase.base import RuleBase
from advisor.rulebase.toml import read_table

SHORT = 8
"""Hex digits of the digest of one card: 1 chance in 4,000 million that a changed card keeps its own."""

LONG = 16
PACKAGE = Path(__file__).resolve().parents[1]
NO_SAY = ("sources.toml", "problems.toml", "cautions.toml")
"""Tables at the head of rules/ that change no advice: where values are from, and how things are grouped in print."""

EXAMPLES = ("fires", "near")
FORMULAS, WORK = "figures", "operations"


def digest_of(parts: Iterable[str], length: int = LONG) -> str:
    """One digest of several texts, in any order: the parts are sorted first."""
    # Each part is hashed by itself, so that no two lists of parts can run together into the same bytes.
    whole = "".join(sorted(sha256(part.encode()).hexdigest() for part in parts))
    return sha256(whole.encode()).hexdigest()[:length]


def card_digests(base: RuleBase, ids: Iterable[str]) -> dict[str, str]:
    """The short digest of each of these files of the rule base, by id; those that are gone are left out."""
    files = files_of(base)
    return {id: file_digest(files[id]) for id in sorted(set(ids)) if id in files}


def files_of(base: RuleBase) -> dict[str, Path]:
    """Every file that advice may rest on, by id: the cards, and the TOML files as `roles.waist`, `tables.grades`."""
    return {**{_table_id(path, base.folder): path for path in _tables(base.folder)}, **base.files}


def _table_id(path: Path, folder: Path) -> str:
    parts = path.relative_to(folder).with_suffix("").parts
    return ".".join(parts if len(parts) > 1 else ("tables", *parts))


def _tables(folder: Path) -> Iterator[Path]:
    return (path for path in sorted(folder.rglob("*.toml")) if path.parent != folder or path.name not in NO_SAY)


def base_digest(base: RuleBase, but: Iterable[str] = ()) -> str:
    """One digest of the whole rule base, or of all of it but some files."""
    left_out = set(but)
    return digest_of(f"{id} {file_digest(path)}" for id, path in files_of(base).items() if id not in left_out)


def code_digest(package: str) -> str:
    """One digest of the modules of a package of the advisor: FORMULAS, or WORK for the operations."""
    paths = sorted((PACKAGE / package).glob("*.py"))
    return digest_of(f"{path.stem} {file_digest(path)}" for path in paths)


def file_digest(path: Path) -> str:
    """The short digest of one file. KnowledgeError if it cannot be read."""
    try:
        stamp = path.stat()
    except OSError as fault:
        raise KnowledgeError(f"cannot be read: {fault.strerror}", where=str(path), hint="put it back") from fault
    return _file_digest(path, stamp.st_mtime_ns, stamp.st_size)


@lru_cache(maxsize=4096)
def _file_digest(path: Path, _time: int, _size: int) -> str:
    """By time and size too, so that a file edited meanwhile is read again."""
    said = _said(read_table(path)) if path.suffix == ".toml" else _code(path)
    return sha256(said.encode()).hexdigest()[:SHORT]


def _said(table: Mapping[str, Any]) -> str:
    return json.dumps(table, sort_keys=True, default=str)


def _code(path: Path) -> str:
    try:
        return plain_tree(ast.parse(path.read_text(encoding="utf-8")))
    except (OSError, UnicodeDecodeError, SyntaxError, ValueError) as fault:
        raise KnowledgeError(f"cannot be read: {fault}", where=str(path), hint="mend the file") from fault


def plain_tree(node: object) -> str:
    """A syntax tree as text: no places, no docstrings, nothing empty: the version of Python leaves no mark."""
    if isinstance(node, ast.AST):
        parts = [f"{name}={plain_tree(part)}" for name, part in _fields(node)]
        return f"{type(node).__name__}({','.join(parts)})"
    if isinstance(node, list):
        return f"[{','.join(map(plain_tree, node))}]"
    return f"{type(node).__name__}:{node!r}"


def _fields(node: ast.AST) -> list[tuple[str, Any]]:
    fields = [(name, part) for name, part in sorted(ast.iter_fields(node)) if part is not None and part != []]
    docstring = ast.get_docstring(node, clean=False) if isinstance(node, _TOLD) else None
    if docstring is not None:
        fields = [(name, part[1:] if name == "body" else part) for name, part in fields]
    if isinstance(node, ast.Call):
        fields = [(name, _told_of(part) if name == "keywords" else part) for name, part in fields]
    return [(name, part) for name, part in fields if name not in ("kind", "type_comment", "type_ignores")]


def _told_of(keywords: list[ast.keyword]) -> list[ast.keyword]:
    return [keyword for keyword in keywords if keyword.arg not in EXAMPLES]


_TOLD = ast.Module | ast.FunctionDef | ast.AsyncFunctionDef | ast.ClassDef
