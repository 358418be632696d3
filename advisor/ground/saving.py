"""Safe saving: wherever a save fails, the file is wholly old or wholly new, and the answer says which.

The order is what makes it so: lock, write a temporary file in the same folder, flush it to disk, read it
back, check that the target is still what was last read, put the temporary file in its place in one step,
flush the folder. Links are followed and stay links; mode and owner stay. Not kept: hard links (the other
names keep the old text), access lists and extended attributes. One gap stays open: a program that does not
ask for the lock can still write between the last check and the replacement, a few microseconds apart.
"""

import errno
import hashlib
import os
import stat
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from advisor.ground.faults import (
    AlreadyThere,
    Changed,
    ChangedOnDisk,
    InUse,
    not_saved,
    refused,
    shown,
)
from advisor.ground.reading import SIZE_CAP, Digest, NotPlain, digest_of, oddity, slurp
from advisor.ground.temps import Misread, discard, forget, sweep, write_temp
from advisor.ground.text import clean

if TYPE_CHECKING:
    from filelock import BaseFileLock

LOCK_SECONDS = 2.0
"""How long to wait for another window that is saving the same file; a save takes milliseconds."""

_NO_HARD_LINKS = {errno.EPERM, errno.ENOTSUP, errno.EOPNOTSUPP, errno.ENOSYS, errno.EMLINK}
_NO_FOLDER_FLUSH = {errno.EINVAL, errno.ENOTSUP, errno.EOPNOTSUPP, errno.ENOSYS}
_LINK_HOPS = 40
_unreleased: "list[BaseFileLock]" = []


@dataclass
class _Spot:
    """Where a save goes: the name asked for, the file behind its links, and that file as found, if any.

    in_place: whether the new text stands there; None when the disk will not say.
    """

    asked: Path
    target: Path
    old: os.stat_result | None
    in_place: bool | None = False


_Check = Callable[[_Spot], bool]
"""Raises SaveError when the save must not go on; True when the target must not exist yet."""


def save_text(path: Path, text: str, *, expect: Digest | None) -> Digest:
    """Put `text` (UTF-8, at most SIZE_CAP bytes) in the file at `path`; its digest, for the next save.

    expect: the digest from the last `read_text` or save of this file; None if there was no file.
    Raises ChangedOnDisk when the file is no longer that (one that already holds `text` is fine, so a save
    that ended in Unconfirmed can be repeated), InUse, Unconfirmed, or plain SaveError.
    """
    data = _encoded(path, text)
    return _save(path, data, _expecting(expect, digest_of(data)))


def create_text(path: Path, text: str) -> Digest:
    """Put `text` in a new file at `path`, mode 0600. AlreadyThere if the name is taken, even by a link."""
    return _save(path, _encoded(path, text), _absent, follow=False)


def export_text(path: Path, text: str, *, replace: bool = False) -> Digest:
    """Write `text` for others to read, through the text gate. replace: the person agreed to overwrite `path`.

    Raises AlreadyThere if the name is taken and `replace` is not set, else as `save_text`.
    """
    return export_bytes(path, clean(text, newlines=True, limit=len(text)).encode(), replace=replace)


def export_bytes(path: Path, data: bytes, *, replace: bool = False) -> Digest:
    """As `export_text`, for anything that is not text; no gate and no cap."""
    return _save(path, data, (lambda spot: False) if replace else _absent, follow=replace)


def backup(path: Path) -> Path:
    """Copy the file at `path`, byte for byte, to NAME.bak beside it; the copy's path.

    No existing file is overwritten: the copy is numbered NAME.bak.2, NAME.bak.3 and so on, unless one of them
    already holds these very bytes, which is then the answer. Raises SaveError.
    """
    data = _to_copy(path)
    for number in range(1, 1000):
        copy = path.with_name(f"{path.name}.bak" + (f".{number}" if number > 1 else ""))
        with suppress(AlreadyThere):
            _save(copy, data, _absent, follow=False, like=path)
            return copy
        with suppress(OSError, NotPlain):
            if slurp(copy, len(data)) == data:
                return copy
    raise not_saved(path, "there are 999 backup copies already", "move the .bak files elsewhere")


def _to_copy(path: Path) -> bytes:
    with _told(_Spot(path, path, None)):
        try:
            data = slurp(path)
        except FileNotFoundError:
            raise not_saved(path, "there is no such file to back up", "check the spelling") from None
    if len(data) > SIZE_CAP:
        raise not_saved(path, f"it is larger than {SIZE_CAP:,} bytes", "check that it is the right file")
    return data


def migrate_text(path: Path, text: str, *, expect: Digest) -> tuple[Digest, Path]:
    """Back the file up, then save `text` over it; the new digest and the copy's path. Raises as both."""
    copy = backup(path)
    return save_text(path, text, expect=expect), copy


def make_folder(folder: Path) -> Path:
    """Make `folder` and what is missing above it, mode 0700; one already there is left. Raises SaveError."""
    for place in [*reversed(folder.parents), folder]:
        with _told(_Spot(place, place, None)):
            if not os.path.isdir(place):
                place.mkdir(mode=0o700, exist_ok=True)
    return folder


def _encoded(path: Path, text: str) -> bytes:
    try:
        data = text.encode()
    except UnicodeEncodeError as fault:
        what = f"the text holds half of a character, U+{ord(text[fault.start]):04X}"
        raise not_saved(path, what, "type that text again") from None
    if len(data) > SIZE_CAP:
        raise not_saved(path, f"the text is larger than {SIZE_CAP:,} bytes", "shorten the notes")
    return data


def _save(
    path: Path, data: bytes, check: _Check, *, follow: bool = True, like: Path | None = None
) -> Digest:
    """All saving goes through here.

    follow: an existing file may be replaced, links lead to it; otherwise the name must be free.
    like: take mode and owner from this file, and lock it in place of `path`.
    """
    spot = _Spot(path, path, None)
    with _told(spot):
        spot.target, spot.old = _find(path, follow)
        if spot.old and not follow:
            raise _taken(spot)
        _writable(spot)
        pattern, dress = _find(like, True) if like else (spot.target, spot.old)
        with _locked(pattern, spot):
            sweep(spot.target.parent)
            _replace(spot, data, check, dress)
            flush_folder(spot.target.parent)
    return digest_of(data)


@contextmanager
def _told(spot: _Spot) -> Iterator[None]:
    """Turn whatever the system answers into a SaveError that says how things stand."""
    try:
        yield
    except Misread:
        what, hint = "what was read back is not what was written", "save to another disk, and check this one"
        raise not_saved(spot.asked, what, hint) from None
    except NotPlain as odd:
        raise not_saved(spot.asked, f"there is {odd} of that name", "give the name of a file") from None
    except (OSError, ValueError) as fault:
        raise refused(spot.asked, fault, in_place=spot.in_place) from fault


def _find(path: Path, follow: bool) -> tuple[Path, os.stat_result | None]:
    """The file that `path` leads to, with what stands there now.

    Strict on purpose: were a link taken for a file after a fault, the save would replace the link itself.
    """
    for _ in range(_LINK_HOPS):
        path = Path(os.path.realpath(path.parent, strict=True)) / path.name
        try:
            found = os.lstat(path)
        except FileNotFoundError:
            return path, None
        if not follow or not stat.S_ISLNK(found.st_mode):
            return path, found
        path = path.parent / os.readlink(path)
    raise OSError(errno.ELOOP, os.strerror(errno.ELOOP))


def _writable(spot: _Spot) -> None:
    if spot.old is None:
        return
    odd = oddity(spot.old.st_mode)
    if odd:
        raise NotPlain(odd)
    if not spot.old.st_mode & 0o222:  # replacing would work all the same, but its owner has said no
        raise not_saved(spot.asked, "the file is marked read-only", "save under another name, or unmark it")


@contextmanager
def _locked(target: Path, spot: _Spot) -> Iterator[None]:
    from filelock import FileLock, Timeout  # 40 ms to import; the first screen must not wait for it

    for left in [_unreleased.pop() for _ in range(len(_unreleased))]:
        _release(left)
    # Not local to the thread: a lock that could not be let go of is released by whichever thread saves next.
    lock = FileLock(lock_path(target), LOCK_SECONDS, mode=0o600, thread_local=False, poll_interval=0.02)
    try:
        lock.acquire()
    except Timeout:
        if not os.path.lexists(lock.lock_file):
            what = "no file can be made in that folder"
            raise not_saved(spot.asked, what, "save to a folder of your own") from None
        hint = "wait for the other window of the advisor to finish, then save again"
        raise InUse(
            "not saved: another window is saving this file; nothing was overwritten",
            where=shown(spot.asked),
            hint=hint,
        ) from None
    try:
        yield
    finally:
        _release(lock)


def _release(lock: "BaseFileLock") -> None:
    try:
        lock.release()
    except OSError:  # the save itself is done or refused by now; the lock must not stay shut for all that
        _unreleased.append(lock)


def lock_path(target: Path) -> Path:
    """The lock beside `target`: `.NAME.lock`, or a digest in place of a name that leaves no room for more."""
    name = target.name
    if len(os.fsencode(name)) > 240:
        name = hashlib.sha256(os.fsencode(name)).hexdigest()
    return target.with_name(f".{name}.lock")


def _replace(spot: _Spot, data: bytes, check: _Check, like: os.stat_result | None) -> None:
    temp = write_temp(spot.target.parent, data, like)
    try:
        if check(spot):
            _place_new(temp, spot)
        else:
            _place(temp, spot)
    except BaseException:
        discard(temp)
        raise
    forget(temp)


def _place(temp: Path, spot: _Spot) -> None:
    mine = os.lstat(temp)
    try:
        os.replace(temp, spot.target)
    except OSError:
        spot.in_place = _stands(mine, spot.target)
        raise
    spot.in_place = True


def _place_new(temp: Path, spot: _Spot) -> None:
    """Give `temp` its name only if that is free, in one step where the disk knows hard links."""
    mine = os.lstat(temp)
    try:
        os.link(temp, spot.target)
    except OSError as fault:
        spot.in_place = _stands(mine, spot.target)
        if spot.in_place is False and isinstance(fault, FileExistsError):
            raise _taken(spot) from None
        if spot.in_place or fault.errno not in _NO_HARD_LINKS:
            raise
        _absent(spot)
        _place(temp, spot)
        return
    spot.in_place = True
    discard(temp)


def _stands(mine: os.stat_result, target: Path) -> bool | None:
    """Whether the file `mine` stands under the name `target`; None if the disk will not say.

    Asked after a failure, as over a network the answer can be lost after the deed.
    """
    try:
        return os.path.samestat(mine, os.lstat(target))
    except FileNotFoundError:
        return False
    except OSError:
        return None


def flush_folder(folder: Path) -> None:
    """Flush the folder's own list of names, on the systems and disks that can."""
    if os.name == "nt":
        return
    fd = os.open(folder, os.O_RDONLY | getattr(os, "O_DIRECTORY", 0) | getattr(os, "O_CLOEXEC", 0))
    try:
        os.fsync(fd)
    except OSError as fault:
        if fault.errno not in _NO_FOLDER_FLUSH:
            raise
    finally:
        os.close(fd)


def _absent(spot: _Spot) -> bool:
    try:
        os.lstat(spot.target)
    except FileNotFoundError:
        return True
    raise _taken(spot)


def _taken(spot: _Spot) -> AlreadyThere:
    what = "not saved: there is a file of that name already; nothing was overwritten"
    return AlreadyThere(what, where=shown(spot.asked), hint="choose another name, or agree to replace it")


def _expecting(expect: Digest | None, new: Digest) -> _Check:
    """The check that the target still is what was last read, or already what is to be saved."""

    def check(spot: _Spot) -> bool:
        try:
            now: Digest | None = digest_of(slurp(spot.target))
        except FileNotFoundError:
            now = None
        if now not in {expect, new}:
            raise _changed(spot, Changed(expect, now))
        return now is None

    return check


def _changed(spot: _Spot, change: Changed) -> ChangedOnDisk:
    if change.found is None:
        what = "not saved: the file has been moved or deleted since it was opened"
        hint = "save it again as a new file, or put it back"
    else:
        since = "since it was opened" if change.expected else "in the meantime, where there was none"
        what = f"not saved: another program wrote this file {since}; nothing was overwritten"
        hint = "save under another name, or open the file again and repeat your change"
    return ChangedOnDisk(what, where=shown(spot.asked), hint=hint, change=change)
