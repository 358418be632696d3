"""Faults at the system calls of a save: make the Nth call fail, once or from then on, or make it lie.

Works from inside the process, on the names that the save path calls. A call that the operating system carries
out before it reports a fault (closing a file) is carried out here too.
"""

import errno
import os
import tempfile
import threading
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from typing import Any

import pytest

try:
    import fcntl
except ImportError:  # Windows; there the lock is another call
    fcntl = None  # type: ignore[assignment]

_OS_CALLS = ["open", "read", "write", "fsync", "close", "replace", "link", "unlink", "chmod", "chown"]
_OS_CALLS += ["stat", "lstat", "fstat", "readlink", "scandir"]
CALLS: list[tuple[Any, str]] = [(os, name) for name in _OS_CALLS if hasattr(os, name)]
CALLS += [(tempfile, "mkstemp")] + ([(fcntl, "flock")] if fcntl else [])

KINDS = [errno.EIO, errno.ENOSPC, errno.EDQUOT, errno.EROFS, errno.EACCES, errno.EINTR]
SPANS = ("once", "same call from then on", "every call from then on")

Real = Callable[..., Any]
Act = Callable[[Real, tuple[Any, ...], dict[str, Any]], Any]
Plan = Callable[[int, str], Act | None]
"""From the number of a call (from 1) and its name to what happens instead of it; None for nothing."""


@contextmanager
def watched(plan: Plan) -> Iterator[list[str]]:
    """Run the block with `plan` at every call on the save path; hands out the calls' names as they come."""
    me = threading.get_ident()
    seen: list[str] = []

    def wrapper(name: str, real: Real) -> Real:
        def call(*args: Any, **kwargs: Any) -> Any:
            if threading.get_ident() != me:
                return real(*args, **kwargs)
            seen.append(name)
            act = plan(len(seen), name)
            return real(*args, **kwargs) if act is None else act(real, args, kwargs)

        return call

    with pytest.MonkeyPatch.context() as patch:
        for module, name in CALLS:
            patch.setattr(module, name, wrapper(name, getattr(module, name)))
        yield seen


def record(work: Callable[[], object]) -> list[str]:
    """The names of the calls that `work` makes when nothing fails."""
    with watched(lambda number, name: None) as seen:
        work()
    return seen


def failing(at: int, call: str, fault: Callable[[], BaseException], span: str = "once") -> Plan:
    """The plan that raises `fault()` at call number `at`, which is a `call`, and after it as `span` says."""

    def act(real: Real, args: tuple[Any, ...], kwargs: dict[str, Any]) -> Any:
        if real.__name__ == "close":
            real(*args, **kwargs)
        raise fault()

    def plan(number: int, name: str) -> Act | None:
        later = span == SPANS[2] or (span == SPANS[1] and name == call)
        return act if number == at or (number > at and later) else None

    return plan


def system(code: int) -> Callable[[], OSError]:
    """Makes the OSError for `code` as the system raises it."""
    return lambda: OSError(code, os.strerror(code))


def lying(at: int, act: Act) -> Plan:
    """The plan that does `act` at call number `at` and nothing else."""
    return lambda number, name: act if number == at else None
