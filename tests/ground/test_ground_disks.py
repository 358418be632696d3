"""Real disks and real permissions: full, read-only, somebody else's; and what others have left behind."""

import os
import shutil
import subprocess
import sys
import tempfile
import time
import zlib
from collections.abc import Iterator
from pathlib import Path
from platform import node

import pytest

from advisor.errors import SaveError
from advisor.ground import (
    create_text,
    make_folder,
    save_text,
)

from .processes import ROOT

ROOT_USER = hasattr(os, "geteuid") and os.geteuid() == 0
NOBODY = 65534


def _temps(folder: Path) -> list[str]:
    return [name for name in os.listdir(folder) if name.endswith(".tmp")]


# Leavings of others


def _temp(folder: Path, host: str, pid: int, age: float = 0.0) -> Path:
    path = folder / f".advisor-{host}-{pid}-abcd.tmp"
    path.write_text("half")
    os.utime(path, (time.time() - age, time.time() - age))
    return path


def test_only_leavings_whose_maker_is_gone_are_swept(tmp_path: Path) -> None:
    here = f"{zlib.crc32(node().encode()):08x}"
    elsewhere = f"{zlib.crc32(b'another machine'):08x}"
    gone = subprocess.Popen([sys.executable, "-c", ""])
    gone.wait()
    swept = [_temp(tmp_path, here, gone.pid), _temp(tmp_path, here, 1, 61)]
    swept += [_temp(tmp_path, elsewhere, gone.pid, 61), _temp(tmp_path, here, os.getpid())]
    kept = [_temp(tmp_path, here, os.getppid(), 50), _temp(tmp_path, elsewhere, gone.pid + 1)]
    for name in ("notes.tmp", ".advisor-notes.tmp", ".advisor-x.toml"):
        kept.append(tmp_path / name)
        kept[-1].write_text("hers")
        os.utime(kept[-1], (0, 0))
    (tmp_path / f".advisor-{here}-{gone.pid}-link.tmp").symlink_to(kept[-1])
    create_text(tmp_path / "coat.toml", "text\n")
    assert [path.name for path in swept if path.exists()] == []
    assert all(path.exists() for path in kept)


# Real disks, real permissions


@pytest.fixture
def small_disk(tmp_path: Path) -> Iterator[Path]:
    disk = tmp_path / "disk"
    disk.mkdir()
    mount = ["mount", "-t", "tmpfs", "-o", "size=128k,mode=0755", "none", str(disk)]
    may = ROOT_USER and shutil.which("mount") is not None
    if not may or subprocess.run(mount, capture_output=True).returncode:
        pytest.skip("a small disk cannot be mounted here")
    yield disk
    subprocess.run(["umount", str(disk)], check=True)


def test_a_full_disk(small_disk: Path) -> None:
    path = small_disk / "coat.toml"
    digest = create_text(path, "old\n")
    with pytest.raises(SaveError, match="the disk is full; what was there before is untouched") as refusal:
        save_text(path, "x" * 200_000, expect=digest)
    assert refusal.value.where == str(path) and "free some space" in refusal.value.hint
    assert path.read_text() == "old\n" and _temps(small_disk) == []
    save_text(path, "x" * 20_000, expect=digest)


def test_a_read_only_disk(small_disk: Path) -> None:
    path = small_disk / "coat.toml"
    digest = create_text(path, "old\n")
    subprocess.run(["mount", "-o", "remount,ro", str(small_disk)], check=True)
    for work in (lambda: save_text(path, "new\n", expect=digest), lambda: make_folder(small_disk / "new")):
        with pytest.raises(SaveError, match="the disk is read-only; what was there before is untouched"):
            work()
    assert path.read_text() == "old\n"


@pytest.fixture
def shared_folder() -> Iterator[Path]:
    """A folder that every account can reach, unlike those of pytest."""
    with tempfile.TemporaryDirectory() as folder:
        os.chmod(folder, 0o755)
        yield Path(folder)


def _as_nobody(code: str) -> str:
    """What the Python program prints when an account without rights runs it."""
    prefix = []
    if ROOT_USER:
        if shutil.which("setpriv") is None:
            pytest.skip("root may do anything, and setpriv is not here to become somebody else")
        prefix = ["setpriv", f"--reuid={NOBODY}", f"--regid={NOBODY}", "--clear-groups"]
    run = subprocess.run(
        [*prefix, sys.executable, "-c", f"import sys; sys.path.insert(0, {str(ROOT)!r})\n{code}"],
        capture_output=True,
        text=True,
        cwd="/",
        env={"PATH": os.environ["PATH"], "PYTHONDONTWRITEBYTECODE": "1"},
    )
    if "No module named" in run.stderr or "failed to execute" in run.stderr:
        pytest.skip("an account without rights cannot read this checkout")
    assert run.returncode == 0, run.stderr
    return run.stdout


DENIED = """
from pathlib import Path
from advisor.errors import AdvisorError
from advisor.ground import *
path = Path({path!r})
for work in (
    lambda: save_text(path, "new", expect=digest_of(b"old")),
    lambda: create_text(path.with_name("new.toml"), "new"),
    lambda: make_folder(path.parent / "folder"),
    lambda: read_text(path),
):
    try:
        work()
        print("done")
    except AdvisorError as refusal:
        print(type(refusal).__name__, refusal.what)
"""


def test_a_folder_of_somebody_else(shared_folder: Path) -> None:
    path = shared_folder / "coat.toml"
    path.write_text("old")
    path.chmod(0o600 if ROOT_USER else 0o200)
    shared_folder.chmod(0o555)
    said = _as_nobody(DENIED.format(path=str(path))).splitlines()
    shared_folder.chmod(0o755)
    denied = "SaveError not saved: you are not allowed to write there; what was there before is untouched"
    assert said == [denied, denied, denied, "CaseError you are not allowed to read this file"]
    path.chmod(0o600)
    assert path.read_text() == "old" and os.listdir(shared_folder) == ["coat.toml"]


@pytest.mark.skipif(not ROOT_USER, reason="needs files of two accounts")
def test_a_lock_file_of_somebody_else_is_named(shared_folder: Path) -> None:
    shared_folder.chmod(0o777)
    path = shared_folder / "coat.toml"
    path.write_text("old")
    path.chmod(0o666)
    (shared_folder / ".coat.toml.lock").write_text("")
    (shared_folder / ".coat.toml.lock").chmod(0o600)
    code = DENIED.format(path=str(path)).replace("refusal.what", "refusal.what, refusal.hint")
    said = _as_nobody(code).splitlines()[0]
    assert "the lock file '.coat.toml.lock' cannot be used" in said and "delete '.coat.toml.lock'" in said
    assert path.read_text() == "old"
