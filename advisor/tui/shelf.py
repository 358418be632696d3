"""The cases one may open: in the folder one stands in, in one's own folder, and the examples. It needs no rules."""

import tomllib
from contextlib import suppress
from dataclasses import dataclass
from importlib.util import find_spec
from pathlib import Path

from advisor.errors import AdvisorError
from advisor.ground import line, read_text, user_folders

MOST = 200
CHECKOUT = Path(__file__).resolve().parents[2] / "cases"


@dataclass(frozen=True)
class Found:
    """A case file: its title and story as far as they can be read, and whether it is an example."""

    path: Path
    title: str
    story: str = ""
    example: bool = False


def own_folder() -> Path:
    """Where cases begun without a file name are kept."""
    return user_folders(create=False).data / "cases"


def examples_folder() -> Path | None:
    """Where the examples are: in a checkout beside the package, installed inside it."""
    if CHECKOUT.is_dir():
        return CHECKOUT
    spec = find_spec("advisor.cases")
    return next((Path(place) for place in (spec.submodule_search_locations or []) if place), None) if spec else None


def shelf() -> tuple[Found, ...]:
    """All that can be opened: own cases, last changed first, then the examples by name."""
    own = [found for folder in {_here(), own_folder()} for path in _files(folder) if (found := _found(path, False))]
    own.sort(key=lambda found: (-_changed(found.path), str(found.path)))
    folder = examples_folder()
    inside = {found.path for found in own}
    examples = [found for path in (_files(folder) if folder else []) if (found := _found(path, True))]
    return (*own[:MOST], *(found for found in examples if found.path not in inside))


def _here() -> Path:
    # The folder one stands in may have been deleted.
    with suppress(OSError):
        return Path.cwd()
    return own_folder()


def _files(folder: Path) -> list[Path]:
    """The TOML files of a folder, by name; none if it cannot be read."""
    try:
        return sorted(path for path in folder.glob("*.toml") if path.is_file())
    except OSError:
        return []


def _changed(path: Path) -> int:
    with suppress(OSError):
        return path.stat().st_mtime_ns
    return 0


def _found(path: Path, example: bool) -> Found | None:
    """A file that is, or wants to be, a case; a broken one is listed by its name, so that opening it says why."""
    try:
        text, _ = read_text(path)
    except AdvisorError:
        return Found(path, path.name, "", example) if path.parent == own_folder() else None
    try:
        raw = tomllib.loads(text)
    except (tomllib.TOMLDecodeError, RecursionError):
        return Found(path, path.name, "", example) if "garment" in text else None
    if "garment" not in raw:
        return None
    title, story = raw.get("title"), raw.get("story")
    return Found(
        path,
        title if isinstance(title, str) and title.strip() else path.name,
        story if isinstance(story, str) else "",
        example,
    )


def where_kept(found: Found) -> str:
    """The file of a case as it is shown; nothing for an example, which is opened as a copy."""
    if found.example:
        return ""
    home, path = str(Path.home()), str(found.path)
    return line("~" + path[len(home) :] if path.startswith(home + "/") else path)
