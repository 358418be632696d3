"""Splitting, sharing and spacing: sums, symmetry, and no drift."""

from fractions import Fraction as F
from itertools import pairwise, product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from advisor.errors import LengthError
from advisor.lengths import INCH_TAPE, METRIC_TAPE, Mm, Tape, on_tape, positions, share, show, split

INCH = F(254, 10)
tapes = st.sampled_from([INCH_TAPE, METRIC_TAPE, Tape("mm", F(1, 2))])
lengths = st.fractions(0, 3000, max_denominator=1000)


def marks(values: tuple[Mm, ...], tape: Tape) -> list[F]:
    return [value / tape.mark for value in values]


@pytest.mark.parametrize(
    ("total", "n", "sizes"),
    [
        (10, 5, [2, 2, 2, 2, 2]),
        (11, 5, [2, 2, 3, 2, 2]),
        (12, 5, [3, 2, 2, 2, 3]),
        (13, 5, [3, 2, 3, 2, 3]),
        (14, 5, [3, 3, 2, 3, 3]),
        (9, 4, [3, 2, 2, 2]),
        (10, 4, [3, 2, 2, 3]),
        (11, 4, [3, 3, 2, 3]),
        (1, 3, [0, 1, 0]),
        (0, 2, [0, 0]),
        (7, 1, [7]),
    ],
)
def test_split_places_the_larger_parts_outermost(total: int, n: int, sizes: list[int]) -> None:
    assert split(F(total), n, METRIC_TAPE) == tuple(map(F, sizes))


def test_split_of_a_waist_excess_over_four_darts() -> None:
    # 2 5/8 in = 42/16 over 4 darts: 42 = 4 x 10 + 2, so 11/16, 10/16, 10/16, 11/16.
    parts = split(F(21, 8) * INCH, 4, INCH_TAPE)
    assert [show(part, INCH_TAPE) for part in parts] == ["11/16 in", "5/8 in", "5/8 in", "11/16 in"]


@given(lengths, st.integers(1, 40), tapes)
def test_split_adds_up_evenly_and_mirrors(total: F, n: int, tape: Tape) -> None:
    parts = split(total, n, tape)
    assert len(parts) == n
    assert sum(parts) == on_tape(total, tape)
    assert all(size.denominator == 1 for size in marks(parts, tape))
    assert max(parts) - min(parts) <= tape.mark
    unlike = sum(a != b for a, b in zip(parts, reversed(parts), strict=True))
    larger = sum(part > min(parts) for part in parts)
    assert unlike == (2 if n % 2 == 0 and larger % 2 else 0)


def test_share_follows_a_published_example_of_largest_remainders() -> None:
    # infinitelexicon.com/largestremainder (seen as an excerpt): 7 seats over 50, 30 and 20 give the quotas
    # 3.5, 2.1 and 1.4; by hand from there, 3 + 2 + 1 are sure and the seventh goes to the remainder 0.5.
    assert share(F(7), [50, 30, 20], METRIC_TAPE) == (4, 2, 1)


def test_equal_losses_are_served_in_the_order_given() -> None:
    assert share(F(5), [1, 1, 1], METRIC_TAPE) == (2, 2, 1)


@settings(max_examples=60)
@given(lengths, st.lists(st.fractions(0, 50, max_denominator=60), min_size=1, max_size=8).filter(any), tapes)
def test_share_adds_up_and_stays_within_a_mark_of_proportion(total: F, weights: list[F], tape: Tape) -> None:
    shares = share(total, weights, tape)
    whole = on_tape(total, tape)
    assert sum(shares) == whole
    for got, weight in zip(shares, weights, strict=True):
        assert (got / tape.mark).denominator == 1
        assert abs(got - whole * weight / sum(weights)) < tape.mark
        assert got >= 0
    assert all(got == 0 for got, weight in zip(shares, weights, strict=True) if weight == 0)


@settings(max_examples=50)
@given(st.integers(0, 9), st.lists(st.integers(1, 9), min_size=3, max_size=3))
def test_no_other_sharing_in_marks_is_nearer_to_proportion(total: int, weights: list[int]) -> None:
    exact = [F(total * weight, sum(weights)) for weight in weights]

    def off(parts: tuple[F, ...] | tuple[int, ...]) -> F:
        return sum((abs(part - want) for part, want in zip(parts, exact, strict=True)), F(0))

    others = [parts for parts in product(range(total + 1), repeat=3) if sum(parts) == total]
    assert off(share(F(total), weights, METRIC_TAPE)) == min(map(off, others))


def test_eight_buttons_over_twenty_inches_do_not_drift() -> None:
    # By hand: multiples of 20/7 in, in sixteenths 45.71, 91.43, 137.14, 182.86, 228.57, 274.29. A gap rounded
    # once to 2 7/8 in and laid seven times would end at 20 1/8 in.
    found = positions(F(0), 20 * INCH, 8, INCH_TAPE)
    assert marks(found, INCH_TAPE) == [0, 46, 91, 137, 183, 229, 274, 320]
    assert 7 * on_tape(20 * INCH / 7, INCH_TAPE) == F(161, 8) * INCH


@settings(max_examples=60)
@given(lengths, lengths, st.integers(2, 40), tapes)
def test_positions_stay_within_half_a_mark_and_end_exactly(a: F, b: F, n: int, tape: Tape) -> None:
    first, last = sorted((a, b))
    found = positions(first, last, n, tape)
    assert len(found) == n
    assert (found[0], found[-1]) == (on_tape(first, tape), on_tape(last, tape))
    for index, place in enumerate(found):
        exact = ((n - 1 - index) * first + index * last) / (n - 1)
        assert abs(place - exact) <= tape.mark / 2
        assert (place / tape.mark).denominator == 1
    gaps = [after - before for before, after in pairwise(found)]
    assert min(gaps) >= 0
    assert sum(gaps) == on_tape(last, tape) - on_tape(first, tape)
    assert max(gaps) - min(gaps) <= 2 * tape.mark


@pytest.mark.parametrize(
    ("call", "problem", "hint"),
    [
        (lambda: split(F(10), 0, METRIC_TAPE), "into 0 parts", "at least 1"),
        (lambda: split(F(-10), 2, METRIC_TAPE), "below zero", "0 or more"),
        (lambda: share(F(10), [], METRIC_TAPE), "nothing to share among", "above 0"),
        (lambda: share(F(10), [0, 0], METRIC_TAPE), "nothing to share among", "above 0"),
        (lambda: share(F(10), [2, -1], METRIC_TAPE), "negative weight", "0 or more"),
        (lambda: share(F(-10), [1], METRIC_TAPE), "below zero", "0 or more"),
        (lambda: positions(F(0), F(10), 1, METRIC_TAPE), "1 positions", "at least 2"),
        (lambda: positions(F(10), F(0), 3, METRIC_TAPE), "before the first", "smaller position first"),
    ],
)
def test_refusals(call, problem: str, hint: str) -> None:  # type: ignore[no-untyped-def]
    with pytest.raises(LengthError) as caught:
        call()
    assert problem in caught.value.what
    assert hint in caught.value.hint
