"""Putting frames where they belong: only in a checkout, and never over anything."""

from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from advisor.check.fault import Book
from advisor.check.material import Material, read_material
from advisor.errors import SaveError, UsageError


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


def refuse_frames(folder: Path) -> None:
    """UsageError that names a file below `folder` in which something is still to be filled in."""
    material = Material(folder, folder.parent / "cases")
    for path in material.all_files():
        if material.is_frame(path):
            raise UsageError("is still to be filled in", where=told(path), hint="`advisor rules check` says what")


def material_of(folder: Path) -> Material:
    """What is there already. A file that cannot be read is passed over: its own check tells of it."""
    return read_material(folder, folder.parent / "cases", Book(""))


def write(made: Made) -> None:
    """All frames, or none if one of the names is taken. UsageError names it."""
    for frame in made.frames:
        if frame.path.exists() or frame.path.is_symlink():
            raise UsageError("is there already", where=told(frame.path), hint="choose another name, or edit that file")
    for frame in made.frames:
        with _telling(frame.path):
            frame.path.parent.mkdir(parents=True, exist_ok=True)
            with frame.path.open("x", encoding="utf-8", newline="\n") as file:
                file.write(frame.text)


def write_page(path: Path, text: str) -> None:
    """A page that can be made again at any time, whatever was there. SaveError if it cannot be written."""
    with _telling(path):
        path.write_text(text, encoding="utf-8", newline="\n")


@contextmanager
def _telling(path: Path) -> Iterator[None]:
    # Sources belong to all who work on them: they are written as an editor would, not as a wearer's case is.
    try:
        yield
    except OSError as fault:
        hint = "see who may write there, and whether there is room"
        raise SaveError(f"cannot be written: {fault.strerror}", where=told(path), hint=hint) from fault


def told(path: Path) -> str:
    """A path of the checkout as it is told: from rules/ or cases/ on."""
    parts = path.parts
    start = max((at for at, part in enumerate(parts) if part in ("rules", "cases")), default=0)
    return "/".join(parts[start:])
