"""Putting frames where they belong: only in a checkout, and never over anything."""

from dataclasses import dataclass
from pathlib import Path

from advisor.check.fault import Book
from advisor.check.material import Material, read_material
from advisor.errors import SaveError, UsageError
from advisor.ground import export_text


@dataclass(frozen=True)
class Frame:
    """A file to be written, and what is to be done once it is."""

    path: Path
    text: str


@dataclass(frozen=True)
class Made:
    """The frames of one new thing, and what to do next, in order."""

    frames: tuple[Frame, ...]
    next: tuple[str, ...]


def checkout(folder: Path) -> Path:
    """`folder`, if it is the rules/ of a checkout. UsageError for an installed advisor."""
    if not (folder.parent / "pyproject.toml").is_file():
        raise UsageError(
            "these rules came with an installed advisor, and the next installation writes over them",
            where=str(folder),
            hint="get the source, install it with `pip install -e .`, and run this there",
        )
    return folder


def material_of(folder: Path) -> Material:
    """What is there already. A file that cannot be read is passed over: its own check tells of it."""
    return read_material(folder, folder.parent / "cases", Book(""))


def write(made: Made) -> None:
    """All frames, or none if one of the names is taken. UsageError names it."""
    for frame in made.frames:
        if frame.path.exists() or frame.path.is_symlink():
            raise UsageError("is there already", where=told(frame.path), hint="choose another name, or edit that file")
    for frame in made.frames:
        try:
            frame.path.parent.mkdir(parents=True, exist_ok=True)
        except OSError as fault:
            hint = "see who may write there"
            raise SaveError(f"no folder can be made: {fault.strerror}", where=told(frame.path.parent), hint=hint) from fault
        export_text(frame.path, frame.text)


def told(path: Path) -> str:
    """A path of the checkout as it is told: from rules/ or cases/ on."""
    parts = path.parts
    start = max((at for at, part in enumerate(parts) if part in ("rules", "cases")), default=0)
    return "/".join(parts[start:])
