"""Running a command in this process: as a person meets it, only quicker."""

import sys
from collections.abc import Callable
from pathlib import Path

import pytest

from advisor.cli.app import main

CASES = Path(__file__).resolve().parents[2] / "cases"


class Said:
    """What a command said: exit code, output in one line of words, the output as it was, the complaint."""

    def __init__(self, code: int, out: str, err: str) -> None:
        self.code, self.raw, self.err = code, out, " ".join(err.split())
        self.out = " ".join(out.split())


Say = Callable[..., Said]


def sayer(monkeypatch: pytest.MonkeyPatch, capsys: pytest.CaptureFixture[str]) -> Say:
    """A function that runs `advisor` with these words."""

    def say(*words: object) -> Said:
        monkeypatch.setattr(sys, "argv", ["advisor", *map(str, words)])
        with pytest.raises(SystemExit) as end:
            main()
        caught = capsys.readouterr()
        assert "Traceback" not in caught.err
        return Said(int(str(end.value.code)), caught.out, caught.err)

    return say
