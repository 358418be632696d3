"""Running the checks, one after the other, over one rule base."""

import gc
from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from time import process_time

from advisor.check import (
    contradicted,
    examples,
    gaps,
    garments,
    idle_vetoes,
    ladders,
    near_misses,
    order,
    reach,
    rivals,
    stages,
    subsumed,
    unfilled,
    verifier,
    vocabulary,
    wording,
)
from advisor.check.fault import Book, Fault
from advisor.check.material import Material, read_material
from advisor.check.scope import Counts, counts_of

Check = Callable[[Material, Book], None]
CHECKS: tuple[tuple[str, Check], ...] = (
    ("unfilled", unfilled.check),
    ("wording", wording.check),
    ("vocabulary", vocabulary.check),
    ("examples", examples.check),
    ("near misses", near_misses.check),
    ("reach", reach.check),
    ("stages", stages.check),
    ("verifier", verifier.check),
    ("order", order.check),
    ("rivals", rivals.check),
    ("garments", garments.check),
    ("subsumed", subsumed.check),
    ("contradicted", contradicted.check),
    ("idle vetoes", idle_vetoes.check),
    ("gaps", gaps.check),
    ("ladders", ladders.check),
)


@dataclass(frozen=True)
class Report:
    """What the checks found, sorted by file, and the seconds of the processor each took."""

    faults: tuple[Fault, ...]
    seconds: tuple[tuple[str, float], ...]
    counts: Counts

    @property
    def errors(self) -> tuple[Fault, ...]:
        """What must be mended."""
        return tuple(fault for fault in self.faults if not fault.note)


def run_checks(folder: Path, cases: Path | None = None) -> Report:
    """All checks on the rule base in `folder`, with the cases beside it."""
    with _uncollected():
        start = process_time()
        book = Book("files")
        material = read_material(folder, cases or folder.parent / "cases", book)
        faults, seconds = list(book), [("files", process_time() - start)]
        for name, check in CHECKS:
            start = process_time()
            book = Book(name)
            check(material, book)
            faults += book
            seconds.append((name, process_time() - start))
        return Report(tuple(sorted(faults)), tuple(seconds), counts_of(material))


@contextmanager
def _uncollected() -> Iterator[None]:
    # Thousands of remembered plans make every garbage collection longer than the last: a sixth of all the time.
    enabled = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if enabled:
            gc.enable()
