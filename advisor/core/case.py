"""A case: one garment, what was answered about it, what was chosen, and what limits the work.

Absent from `answers`: not yet asked. `Unknown`: asked, and she cannot say. The engine sees neither.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Literal

from advisor.core.model import Key, Value

How = Literal["pinned", "measured", "told"]
TapeName = Literal["in", "cm"]
FindingId = str  # "problem@place", never with an amount, so a choice survives a new measure
FixId = str


@dataclass(frozen=True)
class Known:
    """An answer: the value (mm or a word), how it is known, when (ISO date and time), and what was said.

    `told` keeps the answer as given where the value was worked out from it (a pinch, for one).
    """

    value: Value
    how: How = "told"
    at: str = ""
    told: str = ""


@dataclass(frozen=True)
class Unknown:
    """Asked, and she cannot say."""

    at: str = ""


Answer = Known | Unknown


@dataclass(frozen=True)
class Choice:
    """The fix taken for a finding, and when; `reason` is hers when she overruled the first in rank."""

    fix: FixId
    reason: str = ""
    at: str = ""


@dataclass(frozen=True)
class Limits:
    """What the person will not go past. Weights are how much each axis counts in the ranking (0 to 3).

    `hardest` is the highest difficulty she takes on (1-5), `weakest` the least durability (1-5), `visible` the most
    a fix may show (1-5). Without `cutting` nothing is done that cannot be undone; without `buttonholes` the machine
    makes none. `minutes` (likely ones) and `money` are for all of the work; None: no limit. `prices`: what things
    cost, by their names on the plan, sorted; money in whole hundredths of whatever she counts in.
    """

    hardest: int = 5
    weakest: int = 1
    weigh_difficulty: Fraction = Fraction(1)
    weigh_durability: Fraction = Fraction(1)
    weigh_visibility: Fraction = Fraction(1, 2)
    visible: int = 5
    cutting: bool = True
    buttonholes: bool = True
    minutes: int | None = None
    money: Fraction | None = None
    prices: tuple[tuple[str, Fraction], ...] = ()


@dataclass(frozen=True)
class Entry:
    """One line of the case's log: when, and what was done, in plain words."""

    at: str
    what: str


@dataclass(frozen=True)
class Stood:
    """How one finding stood: the fix taken ("": none), those that might be taken, best first, those ruled out."""

    took: FixId = ""
    stood: tuple[FixId, ...] = ()
    out: tuple[FixId, ...] = ()


@dataclass(frozen=True)
class Sums:
    """A plan in figures: grades from 1 to 5, minutes, and how many steps cannot be undone."""

    hardest: int
    weakest: int
    shows: int
    least: int
    likely: int
    most: int
    final: int


@dataclass(frozen=True)
class Record:
    """What a plan was when it was printed, and what it rested on, so that a later one can be held against it.

    `advisor` is the version; `rules`, `formulas`, `operations` and `answers` are digests of all there was, `advice`
    of what came of it. `steps` are in order of work, by stage, each an operation and the digest of what it said.
    `cards` has the digest of every file of the rule base that had a say, `others` one of all that had none.
    """

    at: str
    advisor: str
    rules: str
    others: str
    formulas: str
    operations: str
    answers: str
    advice: str
    totals: Sums
    findings: Mapping[FindingId, Stood] = field(default_factory=dict)
    steps: Mapping[str, tuple[tuple[str, str], ...]] = field(default_factory=dict)
    cards: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True)
class Case:
    """One garment's case, as saved. `garment` names a file of rules/garments without its ending."""

    garment: str
    title: str
    tape: TapeName = "in"
    version: int = 1
    story: str = ""
    answers: Mapping[Key, Answer] = field(default_factory=dict)
    choices: Mapping[FindingId, Choice] = field(default_factory=dict)
    limits: Limits = Limits()
    log: tuple[Entry, ...] = ()
    record: Record | None = None
