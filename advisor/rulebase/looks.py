"""The ways of looking a garment over: what they are, and that every question seen at one says how it is seen."""

from collections.abc import Mapping
from pathlib import Path
from types import MappingProxyType
from typing import Literal

from advisor.core.question import Look
from advisor.errors import KnowledgeError, nearest
from advisor.rulebase.garment import RoleShape
from advisor.rulebase.toml import Shape, read_shape


class LookShape(Shape):
    """One look of rules/looks.toml."""

    name: str
    ask: str
    none: str
    help: str = ""
    seconds: int = 20
    each: int = 3
    untold: Literal["usual", "unknown"] = "usual"


class LooksShape(Shape):
    """The file rules/looks.toml."""

    looks: dict[str, LookShape]


def read_looks(path: Path) -> Mapping[str, Look]:
    """The looks by id, in the order of the file; none if there is no such file."""
    if not path.is_file():
        return MappingProxyType({})
    shapes = read_shape(path, LooksShape).looks
    return MappingProxyType({id: Look(id, **shape.model_dump()) for id, shape in shapes.items()})


def check_looks(roles: Mapping[str, RoleShape], looks: Mapping[str, Look]) -> None:
    """KnowledgeError for a question that is seen at a look nobody declared, or says not how it is seen."""
    for role, shape in sorted(roles.items()):
        for slot, entry in shape.slots.items():
            where = f"rules/roles/{role}.toml: slots.{slot}"
            if entry.look and entry.look not in looks:
                raise KnowledgeError(f"no look '{entry.look}'", where=where, hint=nearest(entry.look, looks))
            if bool(entry.look) != bool(entry.sign):
                raise KnowledgeError("a look and its sign go together", where=where, hint="give both, or neither")
