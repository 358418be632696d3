"""Where the advisor keeps things of its own: cases, settings, and what it needs between two starts."""

import os
from pathlib import Path
from typing import NamedTuple

from advisor.ground.saving import make_folder

APP = "alteration-advisor"
HOME_VARIABLE = "ADVISOR_HOME"


class Folders(NamedTuple):
    """The three folders of one person, as absolute paths."""

    data: Path
    config: Path
    state: Path


def user_folders(*, create: bool = True) -> Folders:
    """The folders for cases (`data`), settings (`config`) and journals (`state`).

    ADVISOR_HOME, when set, holds all three; otherwise the system's own habit decides, and on macOS as on
    Linux the XDG variables go before it. create: make the missing ones, mode 0700; may raise SaveError.
    """
    home = os.environ.get(HOME_VARIABLE, "").strip()
    folders = _under(Path(home)) if home else _usual()
    if create:
        for folder in folders:
            make_folder(folder)
    return folders


def _under(home: Path) -> Folders:
    # Not expanduser: it raises where no home folder is known, and the shell has replaced a ~ already.
    home = Path(os.path.abspath(home))
    return Folders(home / "data", home / "config", home / "state")


def _usual() -> Folders:
    from platformdirs import PlatformDirs

    dirs = PlatformDirs(APP, appauthor=False)
    data, config, state = dirs.user_data_path, dirs.user_config_path, dirs.user_state_path
    if len({data, config, state}) < 3:  # Windows and macOS put all three in one place
        return Folders(data / "data", config / "config", state / "state")
    return Folders(data, config, state)
