"""The sources of published values, and the two marks a value without one carries."""

from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from pydantic import TypeAdapter, ValidationError

from advisor.errors import KnowledgeError
from advisor.rulebase.toml import Shape, read_table

MARKS = {
    "common-practice": "common practice, no source",
    "from-memory": "from memory",
    "case": "as you answered",
}


class SourceShape(Shape):
    """One record of rules/sources.toml."""

    title: str
    publisher: str = ""
    number: str = ""
    year: int | str = ""
    page: str = ""
    address: str = ""
    seen: Literal["whole", "page", "excerpt", "second-hand"]
    quality: str = ""
    note: str = ""


@dataclass(frozen=True)
class Source:
    """A published source: how to name it in one line, where it is, how much of it was read, how good it is."""

    key: str
    line: str
    address: str
    seen: str
    quality: str


def read_sources(path: Path) -> dict[str, Source]:
    """All sources by key. KnowledgeError names the record that is wrong."""
    records = TypeAdapter(dict[str, SourceShape])
    try:
        shapes = records.validate_python(read_table(path))
    except ValidationError as fault:
        first = fault.errors()[0]
        where = ".".join(str(part) for part in first["loc"])
        raise KnowledgeError(f"{where}: {first['msg']}", where=str(path), hint="see the head of the file") from fault
    return {key: _source(key, shape) for key, shape in sorted(shapes.items())}


def source_line(key: str, sources: Mapping[str, Source]) -> str:
    """How a source is told to the person: title and quality, or the mark."""
    if key in MARKS:
        return MARKS[key]
    source = sources[key]
    return f"{source.line} ({source.quality or 'quality not stated'}; {source.seen} seen)"


def _source(key: str, shape: SourceShape) -> Source:
    parts = [shape.title, shape.publisher, shape.number, str(shape.year), f"p. {shape.page}" if shape.page else ""]
    return Source(key, ", ".join(part for part in parts if part), shape.address, shape.seen, shape.quality)
