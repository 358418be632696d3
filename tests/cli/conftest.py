"""The command line in this process, for tests that run it many times."""

import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from tests.cli.saying import CASES, Say, sayer


@pytest.fixture
def say(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Say:
    return sayer(monkeypatch, capsys)


@pytest.fixture
def copy(tmp_path: Path) -> Callable[[str], Path]:
    """A worked case to write in."""

    def made(name: str) -> Path:
        return Path(shutil.copy(CASES / f"{name}.toml", tmp_path))

    return made
