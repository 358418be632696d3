"""Which of the cases a test runs on: the dear tests take some of them, spread evenly, and all with ALL_CASES=1."""

import os
from collections.abc import Sequence
from typing import TypeVar

T = TypeVar("T")


def some(cases: Sequence[T], every: int) -> list[T]:
    """One in `every` of the cases."""
    return list(cases if os.environ.get("ALL_CASES") else cases[::every])
