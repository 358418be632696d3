"""A fresh copy of the small rule base for each test, laid out as a checkout."""

from collections.abc import Iterator
from pathlib import Path

import pytest

from advisor.rulebase import base as shipped
from advisor.rulebase import locate
from advisor.rulebase.base import read_base
from tests.check.mini import Mini


@pytest.fixture
def small(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Mini]:
    """The commands look at the small rule base."""
    mini = Mini(tmp_path)
    mini.write("pyproject.toml", "")
    monkeypatch.setattr(locate, "rules_folder", lambda: mini.folder / "rules")
    monkeypatch.setattr(shipped, "the_base", lambda: read_base(mini.folder / "rules"))
    yield mini
