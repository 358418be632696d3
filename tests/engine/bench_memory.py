"""Memory held over many calls of `advise`, each on another world: `PYTHONPATH=. python -m tests.engine.bench_memory`.

The worlds are those of cases/ with three answers changed, followed to the end; every tenth is told in words. What
was worked out is kept up to a bound, so the memory grows until all is full, within some thousand calls, and must
not grow after. Told after each tenth of the calls: objects that the collector knows, and memory held by the process.

    --calls N      calls (default 2000, well under a minute; 100000 for half an hour)
"""

from __future__ import annotations

import argparse
import gc
import os
import random
import time
from collections.abc import Iterator
from pathlib import Path

from advisor.advise.advise import advise
from advisor.advise.sweep import grid
from advisor.advise.world import world_of
from advisor.casefile import read_case
from advisor.lengths import TAPES
from advisor.rulebase.base import the_base

CASES = Path(__file__).parents[2] / "cases"


def held(calls: int, seed: int = 1) -> Iterator[tuple[int, int, int]]:
    """After each tenth of the calls: calls so far, objects, bytes of memory."""
    base, pick = the_base(), random.Random(seed)
    cases = [read_case(path, base.questions()).case for path in sorted(CASES.glob("*.toml"))]
    for call in range(1, calls + 1):
        case = cases[call // 20 % len(cases)]
        questions = base.garment(case.garment).questions
        keys = pick.sample(sorted(questions), 3)
        suppose = {key: pick.choice(grid(questions[key], TAPES[case.tape])) for key in keys}
        here = world_of(case, base.garment(case.garment), suppose)
        advise(base, here, case.choices, case.limits, fill=True, told=call % 10 == 0)
        if call % (calls // 10) == 0:
            gc.collect()
            pages = int(Path("/proc/self/statm").read_text().split()[1])
            yield call, len(gc.get_objects()), pages * os.sysconf("SC_PAGE_SIZE")


def main() -> None:
    """Print a line for each tenth."""
    parser = argparse.ArgumentParser(description="Memory held over calls of advise.")
    parser.add_argument("--calls", type=int, default=2000)
    given = parser.parse_args()
    print(f"{'calls':>8}{'objects':>10}{'bytes':>14}{'seconds':>9}")
    for call, objects, size in held(max(given.calls, 10)):
        print(f"{call:8}{objects:10}{size:14}{time.process_time():9.0f}", flush=True)


if __name__ == "__main__":
    main()
