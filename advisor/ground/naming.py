"""Names of files the advisor makes itself, from titles that may hold anything."""

import os
import unicodedata
from pathlib import Path

from advisor.ground.faults import not_saved, shown

NAME_BYTES = 80
"""Most bytes in a name made here; disks allow 255, and endings, numbers and .bak come on top."""

UNTITLED = "untitled"

# Letters that do not decompose into a plain letter and a mark.
_LETTERS = str.maketrans(
    {"ß": "ss", "æ": "ae", "œ": "oe", "ø": "o", "ł": "l", "đ": "d", "ð": "d", "þ": "th", "ı": "i", "ħ": "h"}
)
# Device names on Windows, with any ending and in any case (Microsoft, "Naming Files, Paths, and Namespaces";
# from memory). The raised digits of COM¹ become plain ones below.
_DEVICES = {"con", "prn", "aux", "nul", "conin", "conout", "clock"}
_PORTS = {f"{port}{digit}" for port in ("com", "lpt") for digit in range(10)}


def safe_name(title: str) -> str:
    """A file name without ending, from `title`: a-z, 0-9 and single hyphens, 1 to NAME_BYTES bytes.

    Never a dot or hyphen first, never a name that some system keeps for a device. Different titles may give
    the same name, and titles without a Latin letter give "untitled": `new_path` numbers them.
    """
    plain = unicodedata.normalize("NFKD", title[:1000].lower().translate(_LETTERS))
    kept = "".join(char if char.isascii() and char.isalnum() else " " for char in plain if not _mark(char))
    name = "-".join(kept.split())[:NAME_BYTES].strip("-") or UNTITLED
    return f"{name}-file" if name in _DEVICES | _PORTS else name


def _mark(char: str) -> bool:
    return unicodedata.category(char) == "Mn"


def new_path(folder: Path, title: str, ending: str) -> Path:
    """A path in `folder` that nothing has yet: the safe name of `title`, numbered if need be, then `ending`.

    ending: like ".toml". Saving there with `create_text` still refuses if someone else was quicker.
    """
    name = safe_name(title)
    for number in range(1, 10_000):
        path = folder / (name + (f"-{number}" if number > 1 else "") + ending)
        if not os.path.lexists(path):
            return path
    raise not_saved(folder / (name + ending), "ten thousand files have that name", "choose another title")


def inside(root: Path, path: Path) -> bool:
    """Whether `path`, its links followed, lies in the folder `root`. False when that cannot be found out."""
    try:
        return Path(os.path.realpath(path)).is_relative_to(os.path.realpath(root, strict=True))
    except (OSError, ValueError, RuntimeError):
        return False


def check_inside(root: Path, path: Path) -> Path:
    """`path` itself if it lies in the folder `root`; raises SaveError otherwise."""
    if inside(root, path):
        return path
    hint = "give a name without folders in front of it"
    raise not_saved(path, f"this lies outside the folder {shown(root)}", hint)
