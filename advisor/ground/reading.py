"""Reading a file whole, with a cap, and the digest that later tells whether it has changed on disk."""

import hashlib
import os
import stat
from pathlib import Path
from typing import NewType

from advisor.errors import AdvisorError, CaseError
from advisor.ground.faults import reason, shown

Digest = NewType("Digest", str)
"""SHA-256 of a file's bytes, in hex: what it held when it was last read or saved."""

SIZE_CAP = 1_000_000
"""Most bytes in a file of text that is read whole; a case takes a few thousand."""

_CHUNK = 65_536
_READ = (
    os.O_RDONLY
    | getattr(os, "O_CLOEXEC", 0)
    | getattr(os, "O_BINARY", 0)
    | getattr(os, "O_NOCTTY", 0)
    | getattr(os, "O_NONBLOCK", 0)
)


def digest_of(data: bytes) -> Digest:
    """The digest of `data`."""
    return Digest(hashlib.sha256(data).hexdigest())


def oddity(mode: int) -> str:
    """In words, what a file of this `st_mode` is; empty for an ordinary file."""
    if stat.S_ISREG(mode):
        return ""
    kinds = [(stat.S_ISDIR, "a folder"), (stat.S_ISFIFO, "a pipe"), (stat.S_ISSOCK, "a socket")]
    return next((word for test, word in kinds if test(mode)), "a device")


class NotPlain(Exception):
    """Something other than an ordinary file; its words say what."""


def slurp(path: Path, cap: int = SIZE_CAP) -> bytes:
    """At most `cap` + 1 bytes of an ordinary file, so that a longer answer means: too big.

    Raises OSError, or NotPlain. Looks before it opens: opening a pipe waits, opening some devices acts.
    """
    _plain(os.stat(path))
    fd = os.open(path, _READ)
    try:
        _plain(os.fstat(fd))
        return _read(fd, cap + 1)
    finally:
        os.close(fd)


def _plain(found: os.stat_result) -> None:
    odd = oddity(found.st_mode)
    if odd:
        raise NotPlain(odd)


def _read(fd: int, most: int) -> bytes:
    parts: list[bytes] = []
    while most > 0 and (part := os.read(fd, min(_CHUNK, most))):
        parts.append(part)
        most -= len(part)
    return b"".join(parts)


def read_bytes(path: Path, *, error: type[AdvisorError] = CaseError) -> bytes:
    """The bytes of an ordinary file of at most SIZE_CAP bytes. Raises `error` for anything else."""
    try:
        data = slurp(path)
    except NotPlain as odd:
        raise error(f"this is {odd}, not a file", where=shown(path), hint="give the name of a file") from None
    except FileNotFoundError:
        hint = "check the spelling and the folder"
        raise error("there is no such file", where=shown(path), hint=hint) from None
    except PermissionError as fault:
        hint = "ask its owner, or copy it to a folder of your own"
        raise error("you are not allowed to read this file", where=shown(path), hint=hint) from fault
    except OSError as fault:
        raise error(f"cannot be read: {reason(fault).why}", where=shown(path), hint="try again") from fault
    except ValueError as fault:
        what = "the name holds a character no file name may have"
        raise error(what, where=shown(path), hint="check the spelling") from fault
    if len(data) > SIZE_CAP:
        what = f"the file is larger than {SIZE_CAP:,} bytes, more than the advisor ever writes"
        raise error(what, where=shown(path), hint="check that it is the right file")
    return data


def read_text(path: Path, *, error: type[AdvisorError] = CaseError) -> tuple[str, Digest]:
    """The text of a UTF-8 file, line ends as they are, and the digest to hand to `save_text` later.

    A byte order mark at the start is dropped from the text (the digest is of the bytes on disk).
    Raises `error` for a file that is missing, unreadable, too big, no ordinary file or not UTF-8.
    """
    data = read_bytes(path, error=error)
    try:
        return data.decode("utf-8-sig"), digest_of(data)
    except UnicodeDecodeError as fault:
        row = data.count(b"\n", 0, fault.start) + 1
        what = f"line {row} is not UTF-8 text (byte 0x{data[fault.start]:02X})"
        hint = "save it again as UTF-8, or check that it is the right file"
        raise error(what, where=shown(path), hint=hint) from None
