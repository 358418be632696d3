"""What README.md shows is what the program says, and its two lines are the ones that are run."""

import re
import shlex
from pathlib import Path

import pytest

from tests.cli.test_commands import ROOT, run

README = (ROOT / "README.md").read_text(encoding="utf-8")
RUNS = re.findall(r"```text\n\$ advisor ([^\n]*)\n(.*?)```", README, re.DOTALL)


@pytest.mark.parametrize(("command", "shown"), RUNS, ids=[command for command, _ in RUNS])
def test_a_run_shown_is_real(command: str, shown: str, tmp_path: Path) -> None:
    args = [str(ROOT / word) if word.startswith("cases/") else word for word in shlex.split(command)]
    done = run(*args, cwd=tmp_path)
    assert done.returncode == 0, done.stderr
    rest = done.stdout
    for piece in shown.split("[...]\n"):
        assert piece.strip("\n") in rest, f"not said: {piece}"
        rest = rest[rest.index(piece.strip("\n")) + len(piece.strip("\n")) :]


def test_there_are_runs_and_the_two_lines() -> None:
    assert len(RUNS) >= 3
    lines = [line for line in README.splitlines() if line.startswith("    python3 -m venv")]
    assert len(lines) == 2 and lines[0].endswith("advisor") and lines[1].endswith("pytest")


def test_the_job_stands_in_one_paragraph_at_the_top() -> None:
    first = README.split("\n\n")[1]
    assert "interviews her about one" in first.replace("\n", " ") and len(first) < 1200
