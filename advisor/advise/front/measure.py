"""What combinations are measured by: the bounds of a search, and what was found within them."""

from dataclasses import dataclass
from fractions import Fraction

from advisor.advise.front.graph import Pick, Way
from advisor.core.case import FindingId, FixId, Limits

NEVER = 10**9
"""More minutes, and more findings left, than there can be."""

Merit = tuple[int, int, int, int, int]
"""What the search makes least, the first first: findings left, minutes, cuts, visibility, the sum of ranks."""


Prices = tuple[tuple[str, Fraction], ...]


@dataclass(frozen=True)
class Bounds:
    """What no plan may go past. `left`: how many findings may stay open. Prices are by name in small letters."""

    hardest: int = 5
    weakest: int = 1
    visible: int = 5
    cutting: bool = True
    buttonholes: bool = True
    minutes: int | None = None
    money: Fraction | None = None
    prices: Prices = ()
    left: int = NEVER

    def allows(self, way: Way) -> bool:
        """Whether nothing about the way itself goes past them."""
        return (
            way.difficulty <= self.hardest
            and way.durability >= self.weakest
            and way.visibility <= self.visible
            and (self.cutting or not way.cuts)
            and (self.buttonholes or not way.holes)
        )


def bounds_of(limits: Limits) -> Bounds:
    """The limits a person set, as bounds."""
    prices = {what.casefold(): price for what, price in limits.prices}
    return Bounds(
        limits.hardest,
        limits.weakest,
        limits.visible,
        limits.cutting,
        limits.buttonholes,
        limits.minutes,
        limits.money,
        tuple(sorted(prices.items())),
    )


@dataclass(frozen=True)
class Found:
    """A combination: hardest fix, weakest fix, most visible fix, minutes with shared operations once.

    `cuts`: operations that cannot be undone; `left`: findings that stay open; `rank`: the sum of the fixes' ranks;
    `things`: what to have at hand.
    """

    picks: tuple[Pick, ...]
    difficulty: int
    durability: int
    visibility: int
    minutes: int
    cuts: int
    left: int
    rank: int
    things: frozenset[str] = frozenset()

    @property
    def chosen(self) -> dict[FindingId, FixId]:
        """The fix for each finding."""
        return dict(self.picks)

    @property
    def merit(self) -> Merit:
        """What the search makes least, the first first."""
        return self.left, self.minutes, self.cuts, self.visibility, self.rank

    @property
    def axes(self) -> tuple[int, int, int]:
        """What plans are held against each other by; less is better in each."""
        return self.difficulty, -self.durability, self.minutes


def spent(found: Found, prices: Prices) -> Fraction:
    """What a combination costs, as far as there are prices."""
    return sum((price for what, price in prices if what in found.things), Fraction(0))
