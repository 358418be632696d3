"""Questions that matter only together: found by samples of all that is still open.

Sweeps of single answers cannot see that two answers which each change nothing change something together.
"""

from collections.abc import Iterable, Iterator
from random import Random

from advisor.advise.sweep import grid, outcome
from advisor.core.case import Case
from advisor.core.model import Key, Value
from advisor.interview.stand import Stand, stand_of
from advisor.lengths import TAPES
from advisor.rulebase.base import RuleBase

SAMPLES = 48
"""So many samples must change nothing before the questions are done."""


def together(base: RuleBase, case: Case, skip: frozenset[str] = frozenset()) -> Iterator[frozenset[Key] | None]:
    """For each sample that changes the signature, the keys it needs for that; None for each that does not.

    Made for when no answer by itself changes anything; `skip` holds keys put off.
    """
    stand = stand_of(base, case)
    rest = [key for key in open_keys(stand) if key not in skip and stand.may_matter(key)]
    for seed in range(SAMPLES if len(rest) > 1 else 0):
        sample = drawn(stand, rest, seed)
        changed = outcome(base, case, sample)[1] != stand.mark
        yield frozenset(shrunk(stand, sample)) if changed else None


def open_keys(stand: Stand) -> tuple[Key, ...]:
    """What was not asked yet, in the order one meets it."""
    return tuple(key for key in stand.world.garment.questions if key not in stand.case.answers)


def drawn(stand: Stand, keys: Iterable[Key], seed: int) -> dict[Key, Value]:
    """A value for each of these keys."""
    rng, questions, tape = Random(seed), stand.world.garment.questions, TAPES[stand.case.tape]
    return {key: rng.choice(grid(questions[key], tape)) for key in keys}


def shrunk(stand: Stand, sample: dict[Key, Value]) -> dict[Key, Value]:
    """`sample` without what it can do without and still change the signature."""
    for key in list(sample):
        fewer = {other: value for other, value in sample.items() if other != key}
        if outcome(stand.base, stand.case, fewer)[1] != stand.mark:
            sample = fewer
    return sample
