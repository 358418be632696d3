"""Run by the tests as a process of its own, to be killed: `python saver.py KIND PATH [MORE]`.

forks PATH     for each line on the standard input, fork a child that saves PATH in a loop until it is killed,
               print its process id, and when it is dead, `dead`. Each save writes its number on every line of
               PATH; once the save has returned, the number goes to PATH.acks.
count PATH N   add 1 to the number in PATH, N times, signing each; after a refusal, read again.
hold PATH      take the lock on PATH, print `held`, wait for ever.
note PATH DIR  note three answers for the case PATH in the journals of DIR, print `noted`, wait for ever.
"""

import os
import sys
import time
from pathlib import Path

import filelock

from advisor.ground import ChangedOnDisk, InUse, Journal, read_text, save_text
from advisor.ground.saving import lock_path

ROWS = 7000  # of nine bytes: 63 kB


def forks(path: Path) -> None:
    for _ in sys.stdin:
        child = os.fork()
        if child == 0:
            _save_until_killed(path)
        print(child, flush=True)
        os.waitpid(child, 0)
        print("dead", flush=True)


def _save_until_killed(path: Path) -> None:
    acks = os.open(f"{path}.acks", os.O_WRONLY | os.O_APPEND | os.O_CREAT)
    try:
        text, digest = read_text(path)
        number = int(text[:8])
        while True:
            number += 1
            digest = save_text(path, f"{number:08d}\n" * ROWS, expect=digest)
            os.write(acks, b"%d\n" % number)
    except BaseException as fault:
        os.write(acks, f"failed: {fault}\n".encode())
    finally:
        os._exit(1)


def count(path: Path, times: int) -> None:
    done = 0
    while done < times:
        text, digest = read_text(path)
        try:
            save_text(path, f"{int(text.split()[0]) + 1} by {os.getpid()}\n", expect=digest)
        except (ChangedOnDisk, InUse):
            continue
        done += 1


def hold(path: Path) -> None:
    with filelock.FileLock(lock_path(path)):
        print("held", flush=True)
        time.sleep(600)


def note(path: Path, folder: Path) -> None:
    journal = Journal(path, folder=folder)
    for answer in ("hem.depth = 40", "waist.round = 700", "note = 'sleeve, left'"):
        journal.note(answer)
    print("noted", flush=True)
    time.sleep(600)


if __name__ == "__main__":
    kind, where = sys.argv[1], Path(sys.argv[2])
    if kind == "forks":
        forks(where)
    elif kind == "count":
        count(where, int(sys.argv[3]))
    elif kind == "hold":
        hold(where)
    elif kind == "note":
        note(where, Path(sys.argv[3]))
