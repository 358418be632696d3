"""Every test has a home of its own, no colors from outside, and one example to open."""

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from advisor.core.case import Case
from advisor.interview.agenda import Due
from advisor.rulebase.base import RuleBase, the_base
from advisor.tui import shelf
from advisor.tui.screens import questions
from tests.tui.play import EXAMPLE


@pytest.fixture(scope="session")
def base() -> RuleBase:
    return the_base()


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A folder for everything the advisor keeps; one stands in an empty folder beside it."""
    for name in ("NO_COLOR", "ADVISOR_MOUSE", "ACCESSIBLE", "TEXTUAL", "COLORTERM", "FORCE_COLOR"):
        monkeypatch.delenv(name, raising=False)
    folder, here = tmp_path / "home", tmp_path / "here"
    folder.mkdir()
    here.mkdir()
    monkeypatch.setenv("ADVISOR_HOME", str(folder))
    monkeypatch.chdir(here)
    return folder


@pytest.fixture(autouse=True)
def examples(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """One example, the tests' own, so that they do not hang on the examples of the project."""
    folder = tmp_path / "examples"
    folder.mkdir()
    (folder / EXAMPLE.name).write_bytes(EXAMPLE.read_bytes())
    monkeypatch.setattr(shelf, "examples_folder", lambda: folder)
    return folder


@pytest.fixture(autouse=True)
def next_at_hand(monkeypatch: pytest.MonkeyPatch, request: pytest.FixtureRequest) -> None:
    """The next question is the next unanswered one: looking which can change the advice takes seconds of every test.

    Tests marked `searches` look in earnest.
    """
    if request.node.get_closest_marker("searches"):
        return

    def search(base: RuleBase, case: Case, skip: frozenset[str] = frozenset()) -> Iterator[Due | None]:
        for key, question in base.garment(case.garment).questions.items():
            if key not in case.answers and key not in skip and not question.after:
                yield Due(question, True)
                return

    monkeypatch.setattr(questions, "search", search)


@pytest.fixture
def case_file(tmp_path: Path) -> Callable[..., Path]:
    """Makes a case file: the example, with lines of it replaced."""

    def make(name: str = "keeper.toml", **replaced: Any) -> Path:
        text = EXAMPLE.read_text(encoding="utf-8")
        for old, new in replaced.items():
            text = text.replace(old, str(new))
        path = tmp_path / name
        path.write_text(text, encoding="utf-8")
        return path

    return make


def pytest_configure(config: pytest.Config) -> None:
    config.addinivalue_line("markers", "searches: this test looks for the next question in earnest")
