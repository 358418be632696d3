"""How many random rule sets the differential tests take, and from which seed.

ENGINE_FUZZ_TIMES=20 takes twenty times as many; ENGINE_FUZZ_SEED=7 takes others.
"""

import os

TIMES = int(os.environ.get("ENGINE_FUZZ_TIMES", "1"))
SEED = os.environ.get("ENGINE_FUZZ_SEED", "0")


def blocks(count: int, size: int = 25) -> list[range]:
    """`count` seeds in blocks, each block one test."""
    return [range(start, start + size) for start in range(0, count * TIMES, size)]
