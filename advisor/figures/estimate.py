"""Minutes: three guesses to an expectation, and sums whose parts share one bad day.

Adding variances says that the parts vary each by itself. A dull needle or a tired evening slows all
of them, so a shared factor of mean 1 multiplies the sum.
"""

from fractions import Fraction

from advisor.figures.exact import need, not_negative, root
from advisor.figures.formula import Minutes, Ratio, formula

_NONE = Fraction(0)


@formula("estimate.expected", words="({low} + 4 x {likely} + {high}) / 6", source="PERT1", gives="minutes")
def expected(low: Minutes, likely: Minutes, high: Minutes) -> Minutes:
    """Expected minutes of three guesses.

    Minutes. FigureError if they are negative or out of order. Low + 4 likely + high, over 6.
    Worked: low=4, likely=6, high=12 -> 20/3. Source PERT1, and PERT2.
    """
    _ordered(low, likely, high)
    return (low + 4 * likely + high) / 6


@formula("estimate.spread", words="({high} - {low}) / 6", source="PERT1", gives="minutes")
def spread(low: Minutes, high: Minutes) -> Minutes:
    """Standard deviation of the guesses, about the least and the most.

    Minutes. FigureError if they are negative or out of order. A sixth of the range.
    Worked: low=4, high=12 -> 4/3. Source PERT1, and PERT2.
    """
    _ordered(low, low, high)
    return (high - low) / 6


@formula("estimate.first_time_high", words="2 x {high}", source="common-practice", gives="minutes")
def first_time_high(high: Minutes) -> Minutes:
    """The high guess for a fix never done before.

    Minutes. FigureError if negative. Doubled. Worked: high=30 -> 60. Common practice, no source.
    """
    not_negative(high=high)
    return 2 * high


@formula("estimate.lined", words="{minutes} x {factor}", source="common-practice", gives="minutes")
def lined(minutes: Minutes, factor: Ratio) -> Minutes:
    """Minutes of a fix where a lining moves with it.

    Minutes; the factor is 3/2 to 2. FigureError if the minutes are negative or the factor under 1.
    Minutes x factor. Worked: minutes=40, factor=3/2 -> 60. Common practice, no source.
    """
    not_negative(minutes=minutes)
    need(factor >= 1, "a lining never makes the work shorter")
    return minutes * factor


@formula("estimate.sum_expected", words="the sum of {parts}", source="PERT2", gives="minutes")
def sum_expected(parts: tuple[Minutes, ...]) -> Minutes:
    """Expected minutes of distinct operations, each counted once.

    Minutes, 0 for none. FigureError if one is negative. The sum, shared day or not.
    Worked: parts=[10; 20; 5] -> 35. Source PERT2.
    """
    _all_at_least_nothing(parts)
    return sum(parts, start=_NONE)


@formula(
    "estimate.sum_spread",
    words="square root of the sum of the squares of {spreads}",
    source="PERT2",
    gives="minutes",
)
def sum_spread(spreads: tuple[Minutes, ...]) -> Minutes:
    """Spread of a sum whose parts vary each by itself, to 1/1000 minute. Too narrow for one person's day.

    Minutes. FigureError if one is negative. Variances add, spreads do not.
    Worked: spreads=[3; 4] -> 5. Source PERT2.
    """
    _all_at_least_nothing(spreads)
    return root(sum((part**2 for part in spreads), start=_NONE))


@formula(
    "estimate.day_spread",
    words="square root of ({shared} squared x ({expected} squared + {spread} squared) + {spread} squared)",
    source="common-practice",
    gives="minutes",
)
def day_spread(expected: Minutes, spread: Minutes, shared: Ratio) -> Minutes:
    """Spread of a sum when one factor of mean 1 and spread `shared` slows every part alike.

    Minutes, to 1/1000; `expected` and `spread` are those of the sum as if its parts varied each by
    itself. FigureError if one is negative. The variance of a product of independent quantities.
    Worked: expected=100, spread=0, shared=1/5 -> 20. Common practice, no source.
    """
    not_negative(expected=expected, spread=spread, shared=shared)
    return root(shared**2 * (expected**2 + spread**2) + spread**2)


def _ordered(low: Minutes, likely: Minutes, high: Minutes) -> None:
    not_negative(low=low)
    need(low <= likely <= high, "the three guesses are out of order", "low, then likely, then high")


def _all_at_least_nothing(parts: tuple[Minutes, ...]) -> None:
    need(all(part >= 0 for part in parts), "minutes cannot be less than 0")
