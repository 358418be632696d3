"""Shared by the tests of the ground."""

import os
import tempfile
from collections.abc import Iterator
from pathlib import Path

import pytest

MEMORY = Path("/dev/shm")


@pytest.fixture
def quick_folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    """A folder for thousands of saves in which the power stays on: never flushed, in memory if possible."""
    monkeypatch.setattr(os, "fsync", lambda fd: None)
    if not os.access(MEMORY, os.W_OK):
        yield tmp_path
        return
    with tempfile.TemporaryDirectory(dir=MEMORY) as folder:
        yield Path(folder)
