"""The person's settings for the screens: settings.toml in the settings folder, and the colors chosen last.

    mouse = false          # leave the mouse to the terminal
    [keys]
    undo = "z"             # another letter for an action; the help lists their names

The file is hers alone and never written here; the colors chosen with a key are kept in the state folder.
"""

import tomllib
from collections.abc import Mapping
from contextlib import suppress
from dataclasses import dataclass, field
from pathlib import Path

from advisor.errors import AdvisorError, UsageError, nearest
from advisor.ground import clean, make_folder, read_text, save_text, user_folders

FILE = "settings.toml"
COLORS = "colors"


@dataclass(frozen=True)
class Settings:
    """`keys` maps the name of an action to its letter."""

    mouse: bool = True
    keys: Mapping[str, str] = field(default_factory=dict)


def settings_path() -> Path:
    """Where the settings are looked for."""
    return user_folders(create=False).config / FILE


def read_settings(ids: tuple[str, ...]) -> Settings:
    """The settings, or the usual ones if there is no file. UsageError for a file that is wrong.

    ids: the names of the actions that may get another key.
    """
    path = settings_path()
    if not path.exists():
        return Settings()
    text, _ = read_text(path, error=UsageError)
    where = clean(str(path))
    try:
        raw = tomllib.loads(text)
    except tomllib.TOMLDecodeError as fault:
        raise UsageError(
            f"the settings cannot be read: {clean(str(fault))}", where=where, hint="mend the line"
        ) from None
    odd = sorted(set(raw) - {"mouse", "keys"})
    if odd:
        raise UsageError(f"there is no setting '{clean(odd[0])}'", where=where, hint=nearest(odd[0], ["mouse", "keys"]))
    mouse, keys = raw.get("mouse", True), raw.get("keys", {})
    if not isinstance(mouse, bool) or not isinstance(keys, dict):
        raise UsageError("'mouse' is true or false, 'keys' a table", where=where, hint="write mouse = false, or [keys]")
    return Settings(mouse, {name: _letter(where, name, key, ids) for name, key in keys.items()})


def _letter(where: str, name: str, key: object, ids: tuple[str, ...]) -> str:
    if name not in ids:
        raise UsageError(f"there is no action '{clean(name)}'", where=where, hint=nearest(name, ids))
    if not isinstance(key, str) or len(key) != 1 or not key.isascii() or not key.isalpha():
        raise UsageError(f"the key for '{name}' must be one letter", where=where, hint=f'such as {name} = "z"')
    return key


def last_colors() -> str:
    """The name of the colors chosen last; empty if none, or if that cannot be read."""
    with suppress(AdvisorError, OSError):
        path = user_folders(create=False).state / COLORS
        return read_text(path)[0].strip() if path.exists() else ""
    return ""


def keep_colors(name: str) -> None:
    """Keep the colors for the next start. Not being able to is no reason to bother anybody."""
    with suppress(AdvisorError, OSError):
        path = make_folder(user_folders(create=False).state) / COLORS
        save_text(path, name + "\n", expect=read_text(path)[1] if path.exists() else None)
