"""Reading a TOML file of the rule base against a strict shape, with errors that name file and key."""

import tomllib
from pathlib import Path
from typing import Any, TypeVar

from pydantic import BaseModel, ConfigDict, ValidationError

from advisor.errors import KnowledgeError, nearest


class Shape(BaseModel):
    """A strict, frozen shape: unknown keys and wrong types are refused."""

    model_config = ConfigDict(extra="forbid", frozen=True, strict=True)


S = TypeVar("S", bound=Shape)


def read_table(path: Path) -> dict[str, Any]:
    """The file as plain tables. KnowledgeError if it is no TOML."""
    try:
        return tomllib.loads(path.read_text(encoding="utf-8"))
    except (OSError, UnicodeDecodeError, tomllib.TOMLDecodeError, RecursionError) as fault:
        raise KnowledgeError(f"cannot be read: {fault}", where=str(path), hint="mend the TOML") from fault


def read_shape(path: Path, shape: type[S]) -> S:
    """The file as `shape`. KnowledgeError names the file, the key and what to do."""
    data = read_table(path)
    try:
        return shape.model_validate(data)
    except ValidationError as fault:
        first = fault.errors()[0]
        where = ".".join(str(part) for part in first["loc"])
        hint = "see the neighboring files"
        if first["type"] == "extra_forbidden":
            hint = nearest(str(first["loc"][-1]), _fields(shape))
        raise KnowledgeError(f"{where}: {first['msg']}", where=str(path), hint=hint) from fault


def _fields(shape: type[Shape]) -> set[str]:
    names = set(shape.model_fields)
    for field in shape.model_fields.values():
        for part in getattr(field.annotation, "__args__", ()):
            if isinstance(part, type) and issubclass(part, Shape):
                names |= set(part.model_fields)
    return names
