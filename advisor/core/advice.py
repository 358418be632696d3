"""What `advise` answers, and the plan made from it."""

from collections.abc import Mapping
from dataclasses import dataclass

from advisor.core.case import Choice, FindingId
from advisor.core.model import Key, Model
from advisor.core.trace import Trace
from advisor.core.work import Finding, Need, Op, OpId, Option, OptionId, Spread


@dataclass(frozen=True)
class Advice:
    """Findings in order of work, the options for each in order of rank, and the garment after the choices.

    `remains`: what is still wrong with that garment. `idle`: choices whose finding is not (or no longer) there.
    `reads`: the keys that sizing the options looked at. `suggested`: findings whose choice nobody made.
    """

    findings: tuple[Finding, ...]
    options: tuple[Option, ...]
    choices: Mapping[FindingId, Choice]
    idle: tuple[FindingId, ...]
    model: Model
    remains: tuple[Finding, ...]
    trace: Trace
    reads: frozenset[Key] = frozenset()
    suggested: tuple[FindingId, ...] = ()

    def options_for(self, finding: FindingId) -> tuple[Option, ...]:
        """The options for one finding, best first."""
        return tuple(option for option in self.options if option.finding == finding)

    def finding(self, id: FindingId) -> Finding | None:
        """One finding by id."""
        return next((finding for finding in self.findings if finding.id == id), None)

    def chosen(self) -> tuple[Option, ...]:
        """The options chosen, in order of work."""
        return tuple(
            option
            for option in self.options
            if option.finding in self.choices and self.choices[option.finding].fix == option.fix
        )


@dataclass(frozen=True)
class Step:
    """One operation in the plan, and the options it serves."""

    op: Op
    serves: tuple[OptionId, ...]


@dataclass(frozen=True)
class Totals:
    """The plan in figures: the hardest operation, the weakest and the most visible fix, minutes counted once."""

    difficulty: int
    durability: int
    visibility: int
    minutes: Spread
    irreversible: int


@dataclass(frozen=True)
class Plan:
    """The work in one order. `remains` is what it does not close; `blocked` what could not be done in this order.

    `suggested`: findings whose fix nobody chose; the first in rank stands in.
    """

    advice: Advice
    steps: tuple[Step, ...]
    totals: Totals
    materials: tuple[Need, ...]
    remains: tuple[Finding, ...]
    blocked: tuple[OpId, ...]
    suggested: tuple[FindingId, ...]
