"""What cautions warn of: rules/cautions.toml. Cards carry their cautions as sentences; here they get a cause."""

from dataclasses import dataclass
from pathlib import Path

from pydantic import TypeAdapter, ValidationError

from advisor.errors import KnowledgeError
from advisor.rulebase.toml import Shape, read_table


class CauseShape(Shape):
    """One cause in the file."""

    says: str
    words: list[str]
    danger: bool = False


@dataclass(frozen=True)
class Cause:
    """Something several cautions warn of: the sentence for all of them, and words by which each is known."""

    name: str
    says: str
    words: tuple[str, ...]
    danger: bool


def read_causes(path: Path) -> tuple[Cause, ...]:
    """All causes in their order; none where there is no such file. KnowledgeError names the one that is wrong."""
    if not path.is_file():
        return ()
    try:
        shapes = TypeAdapter(dict[str, CauseShape]).validate_python(read_table(path))
    except ValidationError as fault:
        first = fault.errors()[0]
        where = ".".join(str(part) for part in first["loc"])
        raise KnowledgeError(f"{where}: {first['msg']}", where=str(path), hint="see the head of the file") from fault
    return tuple(
        Cause(name, shape.says, tuple(word.casefold() for word in shape.words), shape.danger)
        for name, shape in shapes.items()
    )


def cause_of(caution: str, causes: tuple[Cause, ...]) -> Cause | None:
    """The first cause one of whose words stands in the caution."""
    said = caution.casefold()
    return next((cause for cause in causes if any(word in said for word in cause.words)), None)
