"""What the operating system refuses, in plain words: which file, why, and what to do next."""

import errno
import os
from pathlib import Path
from typing import NamedTuple

from advisor.errors import SaveError
from advisor.ground.text import ELLIPSIS, line

UNTOUCHED = "what was there before is untouched"
_PATH_ROOM = 300


class Changed(NamedTuple):
    """What a file held when it was last looked at and what it holds now, as digests; None for no file."""

    expected: str | None
    found: str | None


class ChangedOnDisk(SaveError):
    """The file is no longer what was read. Nothing was overwritten; `change.found` is its digest now."""

    def __init__(self, what: str, *, where: str, hint: str, change: Changed) -> None:
        super().__init__(what, where=where, hint=hint)
        self.change = change


class AlreadyThere(SaveError):
    """A new file was asked for under a name that is taken. Nothing was overwritten."""


class InUse(SaveError):
    """Another window or program holds the lock on this file. Nothing was overwritten."""


class Unconfirmed(SaveError):
    """The one failure that may come after the new text is in place: the disk did not confirm it.

    The file is whole, old or new; saving again with the same `expect` is right in both cases.
    """


class Reason(NamedTuple):
    """A refusal in words."""

    why: str
    next: str


_ELSEWHERE = "save to a folder of your own; the work is still open here"
_REASONS = {
    errno.ENOSPC: Reason("the disk is full", "free some space and save again; the work is still open here"),
    errno.EDQUOT: Reason("your share of the disk is used up", "delete something of yours and save again"),
    errno.EROFS: Reason("the disk is read-only", _ELSEWHERE),
    errno.EACCES: Reason("you are not allowed to write there", _ELSEWHERE),
    errno.EPERM: Reason("you are not allowed to write there", _ELSEWHERE),
    errno.ENAMETOOLONG: Reason("the file name is too long", "choose a shorter name"),
    errno.ENOENT: Reason("the folder is not there (any more)", "make it again, or save to another one"),
    errno.EEXIST: Reason("something else of that name is in the way", "choose another name"),
    errno.ENOTDIR: Reason("a part of the path is a file, not a folder", "check the path"),
    errno.EISDIR: Reason("this is a folder, not a file", "give the name of a file"),
    errno.ELOOP: Reason("the link leads round in a circle", "give the name of the file itself"),
    errno.EIO: Reason("the disk reported a fault", "save to another disk, and check this one"),
    errno.EINTR: Reason("the system broke off the save", "save again"),
    errno.EMFILE: Reason("too many files are open", "close other programs and save again"),
    errno.ENFILE: Reason("too many files are open", "close other programs and save again"),
    errno.EFBIG: Reason("the file is too big for this disk", "save to another disk"),
    errno.EBUSY: Reason("another program holds the file", "close it there and save again"),
    errno.ETIMEDOUT: Reason("the network folder does not answer", _ELSEWHERE),
    errno.ESTALE: Reason("the network folder has gone away", _ELSEWHERE),
}


def reason(fault: OSError) -> Reason:
    """Why the system refused, and what to do next; a code not known here in the system's own words."""
    known = _REASONS.get(fault.errno or 0)
    if known:
        return known
    said = line(fault.strerror or type(fault).__name__, 80)
    return Reason(f"the system refused ({said})", "save again, or to another folder")


def shown(path: Path) -> str:
    """`path` fit for a message: a file name is text from outside like any other. Its end says most."""
    text = line(str(path))
    return text if len(text) <= _PATH_ROOM else ELLIPSIS + text[1 - _PATH_ROOM :]


def not_saved(path: Path, why: str, hint: str) -> SaveError:
    """The refusal to save `path`, which also says that nothing there has changed."""
    return SaveError(f"not saved: {why}; {UNTOUCHED}", where=shown(path), hint=hint)


def refused(path: Path, fault: OSError | ValueError, *, in_place: bool | None) -> SaveError:
    """The SaveError for what the system answered.

    in_place: whether the new text already stands under the name; None when that could not be found out.
    """
    if not isinstance(fault, OSError):
        why = Reason("the name holds a character no file name may have", "choose another name")
    elif _is_lock(fault):
        lock = line(Path(str(fault.filename)).name, 120)
        advice = f"delete '{lock}', unless someone else is saving just now"
        why = Reason(f"the lock file '{lock}' cannot be used", advice)
    else:
        why = reason(fault)
    if in_place is False:
        return not_saved(path, why.why, why.next)
    stands = "the file holds all of the new text or all of the old, never a mixture"
    if in_place:
        stands = "the new text is in the file, but a power cut now could bring back the old"
    hint = f"save again; if that fails too: {why.next}"
    return Unconfirmed(f"not confirmed: {why.why}; {stands}", where=shown(path), hint=hint)


def _is_lock(fault: OSError) -> bool:
    """Whether a lock file that is there was refused: left by another account, say, or by a run under sudo."""
    name = str(fault.filename or "")
    denied = fault.errno in {errno.EACCES, errno.EPERM, errno.ELOOP}
    return denied and name.endswith(".lock") and os.path.lexists(name)
