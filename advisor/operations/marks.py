"""Figures that must lie on the marks of the tape: shared out, or taken down or up to a mark."""

from fractions import Fraction

from advisor.core.figure import Figure, mm_of
from advisor.figures.trunk import DOMESTIC_ALLOWANCE
from advisor.knowledge.view import plain
from advisor.lengths import Tape, on_tape, split
from advisor.lengths.tape import round_down


def parts(total: Figure, count: int, tape: Tape, id: str) -> tuple[Figure, ...]:
    """`total` shared out in `count` parts on the tape that add up to it: ids `<id>_1`, `<id>_2` and so on."""
    shares = split(mm_of(total), count, tape)
    return tuple(_from(total, f"{id}_{n}", share, "shared out on the tape") for n, share in enumerate(shares, 1))


def seam_allowance(tape: Tape) -> Figure:
    """The seam allowance of a cut piece, on a mark of the tape: what shows and its allowances then add up on it."""
    return plain("seam_allowance", on_tape(DOMESTIC_ALLOWANCE, tape), "common-practice")


def down_to_mark(length: Figure, tape: Tape, id: str) -> Figure:
    """The last mark of the tape not past `length`."""
    return _from(length, id, round_down(mm_of(length), tape.mark), "down to a mark of the tape")


def up_to_mark(length: Figure, tape: Tape, id: str) -> Figure:
    """The first mark of the tape not short of `length`."""
    return _from(length, id, -round_down(-mm_of(length), tape.mark), "up to a mark of the tape")


def _from(given: Figure, id: str, value: Fraction, formula: str) -> Figure:
    return Figure(id, value, formula, (given.id,), given.source, "mm", ((given.id, mm_of(given)),))
