"""The temporary file of a save: made beside its target, read back, swept when its maker is gone."""

import errno
import os
import re
import stat
import sys
import tempfile
import time
import zlib
from contextlib import suppress
from pathlib import Path
from platform import node

PREFIX = ".advisor-"
SUFFIX = ".tmp"
STALE_SECONDS = 60.0
"""A save takes milliseconds; a temporary file this old has lost its maker, on whatever machine that ran."""

NEW_MODE = 0o600
"""Cases hold names and bodies: nobody else's business."""

_NAME = re.compile(re.escape(PREFIX) + r"([0-9a-f]{8})-(\d{1,10})-[^/]*" + re.escape(SUFFIX))
_live: set[str] = set()


class Misread(Exception):
    """What was read back is not what was written."""


def _host() -> str:
    # A folder may be shared over the network: another machine's process ids say nothing here.
    return f"{zlib.crc32(node().encode(errors='replace')):08x}"


def write_temp(folder: Path, data: bytes, old: os.stat_result | None) -> Path:
    """A temporary file in `folder` that holds `data`, flushed to disk and read back.

    old: the file that it will replace, whose mode and owner it takes on; without one, mode 0600.
    Raises OSError or Misread, and then leaves no file behind unless deleting fails too.
    """
    fd, name = tempfile.mkstemp(prefix=f"{PREFIX}{_host()}-{os.getpid()}-", suffix=SUFFIX, dir=folder)
    temp = Path(name)
    _live.add(temp.name)
    try:
        try:
            write_all(fd, data)
            _dress(temp, old)
            os.fsync(fd)
        finally:
            os.close(fd)
        _prove(temp, data)
    except BaseException:
        discard(temp)
        raise
    return temp


def discard(temp: Path) -> None:
    """Delete a temporary file; one that cannot be deleted now is swept at a later save."""
    with suppress(OSError):
        os.unlink(temp)
    _live.discard(temp.name)


def forget(temp: Path) -> None:
    """Note that `temp` has become the target itself."""
    _live.discard(temp.name)


def write_all(fd: int, data: bytes) -> None:
    """Write all of `data`, however little the system takes at a time."""
    rest = memoryview(data)
    while rest:
        done = os.write(fd, rest)
        if done <= 0:  # would go on for ever
            raise OSError(errno.EIO, os.strerror(errno.EIO))
        rest = rest[done:]


def _dress(temp: Path, old: os.stat_result | None) -> None:
    """Give `temp` the owner and mode of the file it will replace."""
    if old is None:
        return
    mode = stat.S_IMODE(old.st_mode) & 0o777
    if sys.platform != "win32":
        mine = os.stat(temp)
        if (mine.st_uid, mine.st_gid) != (old.st_uid, old.st_gid):
            # Run once under sudo, the file must not end up root's; whoever may not give it away keeps it.
            with suppress(PermissionError):
                os.chown(temp, old.st_uid, old.st_gid)
    if mode != NEW_MODE:
        os.chmod(temp, mode)


def _prove(temp: Path, data: bytes) -> None:
    """Read back what stands in `temp`: a kernel or driver can report bytes written that were not."""
    flags = os.O_RDONLY | getattr(os, "O_BINARY", 0) | getattr(os, "O_CLOEXEC", 0)
    fd = os.open(temp, flags)
    try:
        rest = memoryview(data)
        while part := os.read(fd, 65_536):
            if part != rest[: len(part)]:
                raise Misread
            rest = rest[len(part) :]
        if rest:
            raise Misread
    finally:
        os.close(fd)


def sweep(folder: Path) -> None:
    """Delete the temporary files in `folder` whose maker is gone. Never fails: saving matters more."""
    with suppress(OSError), os.scandir(folder) as entries:
        for entry in entries:
            found = _NAME.fullmatch(entry.name)
            if found and _is_stale(entry, found[1], int(found[2])):
                with suppress(OSError):
                    os.unlink(entry.path)


def _is_stale(entry: os.DirEntry[str], host: str, pid: int) -> bool:
    with suppress(OSError):
        found = entry.stat(follow_symlinks=False)
        if not stat.S_ISREG(found.st_mode):
            return False
        if time.time() - found.st_mtime > STALE_SECONDS:
            return True
        if host != _host():
            return False
        return entry.name not in _live if pid == os.getpid() else not _runs(pid)
    return False


def _runs(pid: int) -> bool:
    if sys.platform == "win32":  # there os.kill ends the process it is asked about
        return True
    try:
        os.kill(pid, 0)
    except ProcessLookupError:
        return False
    except (OSError, OverflowError):
        return True
    return True
