"""kill -9 in the middle of saving: nothing torn, nothing acknowledged lost, leavings swept at the next save.

This tests the sudden end of the program, not of the power: what the kernel holds survives kill -9. For power,
the order of the calls is checked (flush before rename, then the folder), as another program, strace, sees it.
"""

import os
import random
import re
import shutil
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

from advisor.ground import InUse, create_text, read_text, save_text, saving

from .processes import saver, says, with_checkout
from .saver import ROWS

pytestmark = pytest.mark.skipif(not hasattr(os, "fork"), reason="kill -9 and fork are not on this system")

KILLS = 200


def _number_in(path: Path) -> int:
    rows = path.read_text().splitlines()
    assert len(rows) == ROWS and len(set(rows)) == 1, "torn"
    return int(rows[0])


def _acknowledged(path: Path) -> int:
    acks = Path(f"{path}.acks")
    rows = acks.read_text().splitlines() if acks.exists() else []
    assert not [row for row in rows if "failed" in row]
    return int(rows[-1]) if rows else 0


def _wait_for_a_save(path: Path) -> None:
    before, start = _acknowledged(path), time.monotonic()
    while _acknowledged(path) == before and time.monotonic() - start < 5:
        time.sleep(0.001)


def _temps(folder: Path) -> list[str]:
    return [name for name in os.listdir(folder) if name.endswith(".tmp")]


def test_two_hundred_kills_while_saving(tmp_path: Path) -> None:
    path = tmp_path / "coat.toml"
    create_text(path, "00000000\n" * ROWS)
    chance = random.Random(4)
    killed = torn_off = number_before = 0
    with saver("forks", path) as process:
        assert process.stdin is not None
        for _ in range(KILLS):
            process.stdin.write("go\n")
            process.stdin.flush()
            child = int(says(process))
            if killed % 2:  # on a busy machine, a short sleep alone would kill before anything was saved
                _wait_for_a_save(path)
            time.sleep(chance.uniform(0.0, 0.015))
            os.kill(child, signal.SIGKILL)
            assert says(process) == "dead"
            killed += 1
            number, acknowledged = _number_in(path), _acknowledged(path)
            assert max(number_before, acknowledged) <= number <= max(number_before, acknowledged) + 1
            number_before = number
            left = _temps(tmp_path)
            assert len(left) <= 2  # this child's, and one more if it was killed before it swept
            torn_off += bool(left)
    assert killed == KILLS
    assert _number_in(path) >= KILLS // 2  # saves went through; kills before the first save prove nothing
    assert torn_off >= 10  # and kills did fall into the middle of saves
    text, digest = read_text(path)
    save_text(path, text + "\n", expect=digest)
    assert _temps(tmp_path) == []


def test_a_lock_ends_with_its_holder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    path = tmp_path / "coat.toml"
    digest = create_text(path, "old\n")
    monkeypatch.setattr(saving, "LOCK_SECONDS", 0.1)
    with saver("hold", path) as process:
        assert says(process) == "held"
        start = time.monotonic()
        with pytest.raises(InUse, match="another window is saving") as refusal:
            save_text(path, "new\n", expect=digest)
        assert time.monotonic() - start < 1.5
        assert refusal.value.where == str(path) and refusal.value.hint
        assert path.read_text() == "old\n"
        process.send_signal(signal.SIGKILL)
        process.wait()
        save_text(path, "new\n", expect=digest)
    assert path.read_text() == "new\n"


SAVE = "from advisor.ground import *; from pathlib import Path; create_text(Path('coat.toml'), 'first\\n'); "
SAVE += "t, d = read_text(Path('coat.toml')); save_text(Path('coat.toml'), 'second\\n', expect=d)"


def test_the_order_of_calls_withstands_a_power_cut(tmp_path: Path) -> None:
    """Expected order: durable_rename of PostgreSQL (commit 606e0f9): flush file, rename, flush folder."""
    strace = shutil.which("strace")
    if strace is None:
        pytest.skip("strace is not installed")
    log = tmp_path / "log"
    watch = [strace, "-qq", "-o", str(log), "-e", "trace=openat,write,fsync,rename,link,linkat,close"]
    run = subprocess.run(
        [*watch, sys.executable, "-c", SAVE],
        cwd=tmp_path,
        env=with_checkout(),
        capture_output=True,
        text=True,
    )
    if "ptrace" in run.stderr:
        pytest.skip("strace may not trace here")
    assert run.returncode == 0, run.stderr
    story = _story(log.read_text())
    once = ["temp opened", "temp written", "temp flushed", "placed", "folder opened", "folder flushed"]
    assert story == once * 2


def _story(log: str) -> list[str]:
    """What happened to temporary files and their folder, in order."""
    names: dict[str, str] = {}
    story: list[str] = []
    for row in log.splitlines():
        if opened := re.match(r'openat\(AT_FDCWD, "([^"]*)", ([^)]*)\) = (\d+)', row):
            temp = opened[1].endswith(".tmp") and "O_EXCL" in opened[2]
            folder = "O_DIRECTORY" in opened[2] and "O_NONBLOCK" not in opened[2]  # that would be a listing
            names[opened[3]] = "temp" if temp else "folder" if folder else ""
            if names[opened[3]]:
                story.append(f"{names[opened[3]]} opened")
        elif done := re.match(r"(write|fsync)\((\d+)", row):
            if names.get(done[2]):
                story.append(f"{names[done[2]]} {'written' if done[1] == 'write' else 'flushed'}")
        elif closed := re.match(r"close\((\d+)", row):
            names.pop(closed[1], None)
        elif re.match(r'(rename|link|linkat)\(.*\.tmp".* = 0', row):
            story.append("placed")
    return story
