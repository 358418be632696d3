"""A journal of answers not yet saved, so that a sudden end costs none of them.

One file for each window that has a case open, in the state folder; one JSON object a line, flushed line by
line: `{"case": PATH, "text": NOTE, "sum": CRC-32 of the note}`. A window holds the lock on its own file as
long as it lives. The system drops the lock when the window ends, in whatever way, so a file whose lock is
free has lost its window and is offered to the next one. The journals of living windows are never touched.
"""

import hashlib
import json
import os
import zlib
from collections.abc import Iterator
from contextlib import contextmanager, suppress
from pathlib import Path
from typing import TYPE_CHECKING, Self

from advisor.errors import SaveError
from advisor.ground.faults import reason, refused, shown
from advisor.ground.folders import user_folders
from advisor.ground.naming import safe_name
from advisor.ground.reading import Digest, NotPlain, digest_of, slurp
from advisor.ground.saving import flush_folder, make_folder
from advisor.ground.temps import write_all

if TYPE_CHECKING:
    from filelock import BaseFileLock

NOTE_CAP = 100_000
"""Most characters in one note; an answer has a few dozen."""

_FILE_CAP = 50_000_000
_WINDOWS = 100
_ENDING = ".jsonl"


class Journal:
    """The unsaved answers of one case: `note` each as given, `clear` after a save, `pending` at the start.

    case_path: the case's file, or None for a case that has none yet. folder: by default `journal` in the
    state folder. Use as a context manager, or `close` it; a journal with notes survives both.
    """

    def __init__(self, case_path: Path | None, *, folder: Path | None = None) -> None:
        self._case = "" if case_path is None else _place(case_path)
        self._folder = folder if folder is not None else _default_folder()
        self._stem = _stem(self._case)
        self._own: Path | None = None
        self._lock: BaseFileLock | None = None
        self._seen: dict[Path, Digest] = {}

    def note(self, text: str) -> None:
        """Add `text` and flush it to disk. Raises SaveError; earlier notes are safe even then."""
        if len(text) > NOTE_CAP:
            what = f"a note of {len(text)} characters is too long"
            raise _not_noted(self._folder, what, "shorten the answer")
        entry = {"case": self._case, "text": text, "sum": _sum(text)}
        own = self._claim()
        try:
            _append(own, json.dumps(entry).encode() + b"\n")
        except OSError as fault:
            told = reason(fault)
            raise _not_noted(own, told.why, told.next) from fault

    def pending(self) -> tuple[str, ...]:
        """The notes of windows that are gone, oldest window first, then this window's own.

        Damaged lines are left out. Raises SaveError if the journal cannot be read.
        """
        self._seen.clear()
        notes: list[str] = []
        for path in self._others():
            with _held(path) as free:
                if free:
                    data = _bytes(path)
                    self._seen[path] = digest_of(data)
                    notes += self._notes(data)
        if self._own is not None:
            notes += self._notes(_bytes(self._own))
        return tuple(notes)

    def clear(self) -> None:
        """Drop this window's notes and those that `pending` has shown; others stay. Raises SaveError."""
        for path, digest in self._seen.items():
            with _held(path) as free:
                if free and digest_of(_bytes(path)) == digest:  # else another window has taken it up since
                    _delete(path)
                    _drop_lock(path)
        self._seen.clear()
        if self._own is not None:
            _delete(self._own)

    def close(self) -> None:
        """Let go of the journal file; its notes, if any, are offered to the next window."""
        if self._lock is not None and self._own is not None:
            if not os.path.lexists(self._own):
                _drop_lock(self._own)
            with suppress(OSError):
                self._lock.release()
        self._lock = self._own = None

    def __enter__(self) -> Self:
        return self

    def __exit__(self, *_: object) -> None:
        self.close()

    def _notes(self, data: bytes) -> list[str]:
        return [text for case, text in _entries(data) if case == self._case]

    def _others(self) -> list[Path]:
        """The journals of this case but for this window's own, oldest first."""
        found = [path for path in self._folder.glob(f"{self._stem}-*{_ENDING}") if path != self._own]
        return sorted(found, key=lambda path: (_written(path), path.name))

    def _claim(self) -> Path:
        """This window's own file: the first that no living window holds and no dead one has left notes in."""
        if self._own is not None:
            return self._own
        make_folder(self._folder)
        for number in range(1, _WINDOWS):
            path = self._folder / f"{self._stem}-{number}{_ENDING}"
            lock = None if os.path.lexists(path) else _take(path)
            if lock is None:
                continue
            if not os.path.lexists(path):
                self._own, self._lock = path, lock
                return path
            lock.release()
        raise _not_noted(self._folder, "too many windows have this case open", "close some of them")


def unsaved_cases(folder: Path | None = None) -> tuple[str, ...]:
    """The paths of cases with notes of windows that are gone, sorted; "" stands for a case never saved.

    Raises SaveError if a journal cannot be read.
    """
    folder = folder if folder is not None else _default_folder()
    cases: set[str] = set()
    for path in sorted(folder.glob(f"*{_ENDING}")):
        with _held(path) as free:
            if free:
                cases |= {case for case, _ in _entries(_bytes(path))}
    return tuple(sorted(cases))


def _default_folder() -> Path:
    return user_folders(create=False).state / "journal"


def _place(case_path: Path) -> str:
    # One case must have one journal whatever link leads to it; a name no file can have is told at the save.
    try:
        return os.path.realpath(case_path)
    except ValueError:
        return str(case_path)


def _stem(case: str) -> str:
    tag = hashlib.sha256(case.encode(errors="surrogatepass")).hexdigest()[:16]
    return f"{safe_name(Path(case).stem)[:40].strip('-')}-{tag}"


def _sum(text: str) -> int:
    return zlib.crc32(text.encode(errors="surrogatepass"))


def _written(path: Path) -> int:
    try:
        return path.stat().st_mtime_ns
    except OSError:
        return 0


def _entries(data: bytes) -> Iterator[tuple[str, str]]:
    """Case and note of each whole line; a line torn by a sudden end fails as JSON or by its sum."""
    for row in data.split(b"\n"):
        with suppress(ValueError, KeyError, TypeError, RecursionError):
            entry = json.loads(row)
            case, text = entry["case"], entry["text"]
            if isinstance(case, str) and isinstance(text, str) and entry["sum"] == _sum(text):
                yield case, text


def _append(path: Path, row: bytes) -> None:
    flags = os.O_WRONLY | os.O_APPEND | os.O_CREAT | getattr(os, "O_NOFOLLOW", 0)
    flags |= getattr(os, "O_BINARY", 0) | getattr(os, "O_CLOEXEC", 0)
    fd = os.open(path, flags, 0o600)
    try:
        fresh = os.fstat(fd).st_size == 0
        # The line before may be torn; starting afresh costs an empty line, which is passed over.
        write_all(fd, row if fresh else b"\n" + row)
        os.fsync(fd)
    finally:
        os.close(fd)
    if fresh:
        flush_folder(path.parent)


def _bytes(path: Path) -> bytes:
    try:
        return slurp(path, _FILE_CAP)
    except FileNotFoundError:
        return b""
    except NotPlain as odd:
        raise SaveError(f"this is {odd}, not a journal", where=shown(path), hint="delete it") from None
    except OSError as fault:
        what = f"the notes of unsaved answers cannot be read: {reason(fault).why}"
        raise SaveError(what, where=shown(path), hint="start again; the notes stay where they are") from fault


def _delete(path: Path) -> None:
    try:
        path.unlink(missing_ok=True)
    except OSError as fault:
        told = reason(fault)
        what = f"the notes of answers that are saved by now cannot be deleted: {told.why}"
        raise SaveError(what, where=shown(path), hint=told.next) from fault


def _not_noted(path: Path, why: str, hint: str) -> SaveError:
    what = f"the answer is not noted for recovery: {why}; earlier notes are untouched"
    return SaveError(what, where=shown(path), hint=hint)


def _lock_of(path: Path) -> Path:
    return path.with_name(path.name + ".lock")


def _drop_lock(path: Path) -> None:
    # Only while holding it; a waiter that then locks the nameless file finds that out and starts over.
    with suppress(OSError):
        _lock_of(path).unlink()


def _take(path: Path) -> "BaseFileLock | None":
    """The lock on a journal, or None if a living window holds it. Raises SaveError."""
    from filelock import FileLock, Timeout

    lock = FileLock(_lock_of(path), blocking=False, mode=0o600)
    try:
        lock.acquire()
    except Timeout:
        return None
    except OSError as fault:
        raise refused(path, fault, in_place=False) from fault
    return lock


@contextmanager
def _held(path: Path) -> Iterator[bool]:
    """Hold the lock on a journal meanwhile, if it is free."""
    lock = _take(path)
    try:
        yield lock is not None
    finally:
        if lock is not None:
            with suppress(OSError):
                lock.release()
