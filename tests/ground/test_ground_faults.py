"""Every system call of a save made to fail: the file is wholly old or wholly new, and what is told is true.

The method is SQLite's, in our own words: fail the Nth call, once and then for ever after, for N = 1, 2, 3 and
so on to the last ("How SQLite Is Tested", on I/O errors). Goal: at least 100 faults for each kind of save.
"""

import errno
import os
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from advisor.errors import SaveError
from advisor.ground import (
    Unconfirmed,
    create_text,
    digest_of,
    export_text,
    migrate_text,
    read_text,
    save_text,
    saving,
)

from .inject import KINDS, SPANS, failing, lying, record, system, watched

OLD = "title = 'Tablecloth skirt, act two'\n" * 40
NEW = "title = 'Curtain coat, act three'\n" * 60
GOAL = 100

Save = Callable[[Path], object]


def _create(path: Path) -> object:
    return create_text(path, NEW)


def _overwrite(path: Path) -> object:
    return save_text(path, NEW, expect=digest_of(OLD.encode()))


def _migrate(path: Path) -> object:
    return migrate_text(path, NEW, expect=digest_of(OLD.encode()))[0]


def _export(path: Path) -> object:
    return export_text(path, NEW, replace=True)


SAVES: dict[str, tuple[Save, str | None]] = {
    "create": (_create, None),
    "overwrite": (_overwrite, OLD),
    "migrate": (_migrate, OLD),
    "export": (_export, OLD),
}


class Bench:
    """A fresh folder for each fault, and the verdict on what the fault left there."""

    def __init__(self, root: Path, kind: str) -> None:
        self.save, self.old = SAVES[kind]
        self.root = root
        self.faults = self.told = self.unconfirmed = 0

    def fresh(self) -> Path:
        folder = self.root / "wardrobe"
        shutil.rmtree(folder, ignore_errors=True)
        folder.mkdir()
        path = folder / "coat.toml"
        if self.old is not None:
            path.write_text(self.old)
        return path

    def calls(self) -> list[str]:
        """The names of the calls of one save that goes well."""
        path = self.fresh()
        return record(lambda: self.save(path))

    def holds(self, path: Path) -> str | None:
        return path.read_text() if path.exists() else None

    def attempt(self, path: Path) -> SaveError | None:
        """Save; None for "saved", which must then be true."""
        self.faults += 1
        try:
            answer = self.save(path)
        except SaveError as refusal:
            self.told += 1
            return refusal
        assert answer == digest_of(NEW.encode())
        return None

    def judge(self, path: Path, refusal: SaveError | None, what_failed: str) -> None:
        now = self.holds(path)
        assert now in (self.old, NEW), f"torn by {what_failed}"
        if refusal is None:
            assert now == NEW, f"false 'saved' after {what_failed}"
        else:
            self._judge_words(refusal, now, what_failed)
        copy = path.with_name("coat.toml.bak")
        if self.save is _migrate and (now == NEW or copy.exists()):
            assert copy.read_text() == OLD, f"backup torn or missing after {what_failed}"

    def _judge_words(self, refusal: SaveError, now: str | None, what_failed: str) -> None:
        assert "coat.toml" in refusal.where and refusal.hint and "Errno" not in str(refusal)
        if isinstance(refusal, Unconfirmed):
            self.unconfirmed += 1
            assert refusal.what.startswith("not confirmed: ")
        else:
            assert now == self.old, f"told as untouched, yet changed by {what_failed}"
            assert refusal.what.startswith("not saved: ")
            assert "untouched" in refusal.what or "nothing was overwritten" in refusal.what

    def afterwards(self, path: Path) -> None:
        """The next save works, and leaves no temporary file, whatever the fault left behind."""
        now = self.holds(path)
        save_text(path, "after\n", expect=None if now is None else digest_of(now.encode()))
        assert read_text(path)[0] == "after\n"
        assert _temps(path.parent) == []


def _temps(folder: Path) -> list[str]:
    return [name for name in os.listdir(folder) if name.endswith(".tmp")]


@pytest.fixture
def bench(quick_folder: Path, request: pytest.FixtureRequest, monkeypatch: pytest.MonkeyPatch) -> Bench:
    monkeypatch.setattr(saving, "LOCK_SECONDS", 0.005)
    return Bench(quick_folder, request.param)


each_save = pytest.mark.parametrize("bench", SAVES, indirect=True)


@each_save
def test_every_call_fails_in_every_way(bench: Bench) -> None:
    calls = bench.calls()
    for at, call in enumerate(calls, 1):
        for code in KINDS:
            for span in SPANS:
                what = f"{call} (call {at}), {os.strerror(code)}, {span}"
                path = bench.fresh()
                with watched(failing(at, call, system(code), span)):
                    refusal = bench.attempt(path)
                bench.judge(path, refusal, what)
                if span == "once" and call != "unlink":
                    assert _temps(path.parent) == [], f"temporary file left by {what}"
                bench.afterwards(path)
    assert bench.faults >= GOAL
    assert bench.faults == len(calls) * len(KINDS) * len(SPANS)
    assert bench.told >= bench.faults // 2  # most faults leave no way to save
    assert bench.unconfirmed >= len(KINDS)


@each_save
def test_every_call_is_broken_off_by_the_keyboard(bench: Bench) -> None:
    calls = bench.calls()
    broken_off = 0
    for at, call in enumerate(calls, 1):
        path = bench.fresh()
        with watched(failing(at, call, KeyboardInterrupt)), pytest.raises(KeyboardInterrupt):
            bench.save(path)
        broken_off += 1
        assert bench.holds(path) in (bench.old, NEW), f"torn by a break at {call}"
        bench.afterwards(path)
    assert broken_off >= 20


def _half(real, args, kwargs):
    fd, data = args
    real(fd, bytes(data)[: len(data) // 2])
    return len(data)


def _nothing(real, args, kwargs):
    return len(args[1])


def _flipped(real, args, kwargs):
    fd, data = args
    return real(fd, bytes([data[0] ^ 1]) + bytes(data)[1:])


def _too_many(real, args, kwargs):
    fd, data = args
    real(fd, bytes(data)[:7])
    return len(data) + 1000


def _too_few(real, args, kwargs):
    return real(*args) // 2


def _twice(real, args, kwargs):
    real(*args)
    return real(*args)


def _zero(real, args, kwargs):
    return 0


LIES = [_half, _nothing, _flipped, _too_many, _too_few, _twice, _zero]


@each_save
@pytest.mark.parametrize("lie", LIES)
def test_a_write_that_lies_is_found_out(bench: Bench, lie: Callable[..., int]) -> None:
    calls = bench.calls()
    writes = [at for at, call in enumerate(calls, 1) if call == "write"]
    assert len(writes) == (2 if bench.save is _migrate else 1)
    for at in writes:
        path = bench.fresh()
        with watched(lying(at, lie)):
            refusal = bench.attempt(path)
        assert refusal is not None, f"{lie.__name__} went unnoticed"
        bench.judge(path, refusal, lie.__name__)
        assert _temps(path.parent) == []
        bench.afterwards(path)


@each_save
def test_short_but_honest_writes_are_carried_on(bench: Bench) -> None:
    path = bench.fresh()

    def short(real, args, kwargs):
        return real(args[0], bytes(args[1])[:100])

    with watched(lambda number, name: short if name == "write" else None) as seen:
        assert bench.attempt(path) is None
    bench.judge(path, None, "short writes")
    assert seen.count("write") >= len(NEW) // 100


@each_save
def test_a_read_back_that_differs_stops_the_save(bench: Bench) -> None:
    calls = bench.calls()
    reads = [at for at, call in enumerate(calls, 1) if call == "read"]

    def flipped(real, args, kwargs):
        data = real(*args)
        return data[:-1] + bytes([data[-1] ^ 1]) if data else b"x"

    stopped = 0
    for at in reads:
        path = bench.fresh()
        with watched(lying(at, flipped)):
            refusal = bench.attempt(path)
        stopped += refusal is not None
        if bench.save is not _migrate:  # there, misreading the old file makes a wrong copy, yet saves nothing
            bench.judge(path, refusal, "a flipped read")
    assert stopped >= 2


@each_save
@pytest.mark.parametrize("code", [errno.EIO, errno.EINVAL, errno.ENOTSUP])
def test_a_folder_that_cannot_be_flushed(bench: Bench, code: int) -> None:
    """Some disks know no flushing of folders, and say so by EINVAL; a fault of the disk is something else."""
    calls = bench.calls()
    last = max(at for at, call in enumerate(calls, 1) if call == "fsync")
    path = bench.fresh()
    with watched(failing(last, "fsync", system(code))):
        refusal = bench.attempt(path)
    assert isinstance(refusal, Unconfirmed) == (code == errno.EIO) and bench.holds(path) == NEW
    bench.judge(path, refusal, "flushing the folder")


@pytest.mark.parametrize(("bench", "call"), [("create", "link"), ("overwrite", "replace")], indirect=["bench"])
def test_an_answer_lost_after_the_deed_is_not_told_as_untouched(bench: Bench, call: str) -> None:
    path = bench.fresh()

    def done_but_denied(real, args, kwargs):
        real(*args)
        raise system(KINDS[0])()

    with watched(lambda number, name: done_but_denied if name == call else None):
        refusal = bench.attempt(path)
    assert isinstance(refusal, Unconfirmed)
    assert bench.holds(path) == NEW
    again = save_text(path, NEW, expect=None if bench.old is None else digest_of(OLD.encode()))
    assert again == digest_of(NEW.encode())  # the same save, repeated, is right
