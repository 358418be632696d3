"""Work for the engine, done in threads beside the screen: one step at a time, and it stops when nobody waits for it.

One step is one look at one question. The lock is there because the advice already worked out is remembered in one
place for all; steps keep it short, and a cancelled worker ends after the step it is in, so quitting never hangs.
Two things keep the screen quick meanwhile: threads change over after a millisecond instead of five (drawing a screen
waits for its turn a hundred times), and after each step the thread rests a little, which also lets others at the lock.
"""

from collections.abc import Callable, Iterable, Iterator
from sys import setswitchinterval
from threading import Lock
from time import sleep
from typing import TypeVar

from textual.worker import get_current_worker

Item = TypeVar("Item")

ENGINE = Lock()
TURN_SECONDS = 0.001
REST_SECONDS = 0.005


def change_over_often() -> None:
    """Let threads change over often enough for a screen to be drawn beside the engine."""
    setswitchinterval(TURN_SECONDS)


def stepwise(steps: Iterable[Item]) -> Iterator[Item]:
    """The items of `steps`, each made with the engine to itself, until the worker that asks is cancelled."""
    worker, waiting = get_current_worker(), iter(steps)
    while not worker.is_cancelled:
        with ENGINE:
            try:
                item = next(waiting)
            except StopIteration:
                return
        yield item
        sleep(REST_SECONDS)


def once(make: Callable[[], Item]) -> Iterator[Item]:
    """What `make` gives, worked out with the engine to itself; nothing if nobody waits for it any more."""
    yield from stepwise(make() for _ in range(1))
