"""A fresh copy of the small rule base for each test."""

from pathlib import Path

import pytest

from tests.check.mini import Mini


@pytest.fixture
def mini(tmp_path: Path) -> Mini:
    return Mini(tmp_path)
