"""Starting `saver.py`, and making sure that what was started has ended."""

import os
import subprocess
import sys
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

ROOT = Path(__file__).parents[2]


def with_checkout() -> dict[str, str]:
    """The environment in which another Python finds this checkout before anything else."""
    paths = [str(ROOT), *filter(None, [os.environ.get("PYTHONPATH")])]
    return {**os.environ, "PYTHONPATH": os.pathsep.join(paths)}


@contextmanager
def saver(*words: object) -> Iterator["subprocess.Popen[str]"]:
    """`saver.py` with these words, its input and output as pipes of text; killed at the end."""
    process = subprocess.Popen(
        [sys.executable, str(Path(__file__).with_name("saver.py")), *map(str, words)],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        text=True,
        env=with_checkout(),
    )
    try:
        yield process
    finally:
        process.kill()
        process.communicate()


def says(process: "subprocess.Popen[str]") -> str:
    """The next line that it prints."""
    assert process.stdout is not None
    return process.stdout.readline().strip()
