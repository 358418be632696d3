"""Lengths shared out in tape marks with nothing lost: parts that add up, positions that do not drift."""

from collections.abc import Sequence
from fractions import Fraction

from advisor.errors import LengthError
from advisor.lengths.tape import Mm, Tape, on_tape


def split(total: Mm, n: int, tape: Tape) -> tuple[Mm, ...]:
    """`total` in `n` parts, in mm: each on the tape, as equal as marks allow, adding up to on_tape(total).

    Parts differ by one mark at most. The larger ones lie outermost and mirror each other, with one in the
    middle if both counts are odd; only an odd number of larger parts among an even `n` cannot mirror, and
    then the one left over lies on the first side. Raises LengthError if `n` < 1 or `total` < 0.
    """
    if n < 1:
        raise LengthError(f"cannot split into {n} parts", hint="ask for at least 1 part")
    marks, left = divmod(_marks(total, tape), n)
    sizes = [marks] * n
    for index in _outer_first(n, left):
        sizes[index] += 1
    return tuple(size * tape.mark for size in sizes)


def _outer_first(n: int, count: int) -> list[int]:
    """`count` of `n` places in mirrored pairs from the outside in, the middle taking an odd one."""
    middle = [n // 2] if n % 2 and count % 2 else []
    pairs = [index for first in range(n // 2) for index in (first, n - 1 - first)]
    return middle + pairs[: count - len(middle)]


def share(total: Mm, weights: Sequence[Fraction | int], tape: Tape) -> tuple[Mm, ...]:
    """`total` shared in proportion to `weights`, in mm: each share on the tape, adding up to on_tape(total).

    Largest remainder: every share is rounded down to a mark, and the marks left over go one each to the
    shares that lost most; equal losses are served in the order given. Each share is thus within one mark of
    its exact proportion of on_tape(total). Raises LengthError if `total` < 0, a weight is negative, or the
    weights add up to nothing.
    """
    if any(weight < 0 for weight in weights):
        raise LengthError("cannot share by a negative weight", hint="give weights of 0 or more")
    whole = sum(weights, Fraction(0))
    if not whole:
        raise LengthError("nothing to share among", hint="give at least one weight above 0")
    marks = _marks(total, tape)
    exact = [marks * Fraction(weight) / whole for weight in weights]
    sizes = [int(value) for value in exact]
    most_lost = sorted(range(len(exact)), key=lambda index: sizes[index] - exact[index])
    for index in most_lost[: marks - sum(sizes)]:
        sizes[index] += 1
    return tuple(size * tape.mark for size in sizes)


def positions(first: Mm, last: Mm, n: int, tape: Tape) -> tuple[Mm, ...]:
    """`n` evenly spaced positions from `first` to `last`, both included, in mm, each on the tape.

    Each position is rounded from its own exact place, never from the one before it: all lie within half a
    mark of true and the gaps add up to the run. Positions never step back; two may fall on one mark if the
    run has fewer marks than positions. Raises LengthError if `n` < 2 or `last` < `first`.
    """
    if n < 2:
        raise LengthError(f"cannot space {n} positions", hint="both ends count: ask for at least 2")
    if last < first:
        raise LengthError("the last position lies before the first", hint="give the smaller position first")
    return tuple(on_tape(first + (last - first) * Fraction(index, n - 1), tape) for index in range(n))


def _marks(total: Mm, tape: Tape) -> int:
    if total < 0:
        raise LengthError("cannot share out a length below zero", hint="give a total of 0 or more")
    return int(on_tape(total, tape) / tape.mark)
