"""The work: operations, what a fix comes to on this garment, and what it is offered for."""

from collections.abc import Mapping
from dataclasses import dataclass, field
from functools import cached_property
from typing import Literal

from advisor.core.case import FindingId, FixId
from advisor.core.figure import Figure
from advisor.core.model import Effect, Mm, Put
from advisor.core.stages import Stage
from advisor.core.template import Template

OpId = str
OptionId = str  # "finding>fix"
NodeId = str
Setup = Literal["table", "unpick", "hand", "straight", "zigzag", "buttonhole", "iron", "body"]


@dataclass(frozen=True)
class Spread:
    """Minutes: the least, the likely and the most it takes a careful home sewer."""

    least: int
    likely: int
    most: int

    def __add__(self, other: "Spread") -> "Spread":
        return Spread(self.least + other.least, self.likely + other.likely, self.most + other.most)


@dataclass(frozen=True)
class Need:
    """Something to have at hand: what, and how much in words."""

    what: str
    amount: str = ""


@dataclass(frozen=True)
class Op:
    """One operation. It can only be done while every state in `expects` holds; it then has its `effects`.

    `says` is the instruction, with {names} of figures. Equal ids are the same work, done once.
    An operation that cannot be undone names in `check_before` what to make sure of first.
    """

    id: OpId
    stage: Stage
    verb: str
    places: tuple[str, ...]
    setup: Setup
    minutes: Spread
    says: str
    effects: tuple[Effect, ...]
    expects: tuple[Put, ...] = ()
    needs: tuple[OpId, ...] = ()
    reversible: bool = True
    check_before: str = ""
    try_on: bool = False
    figures: Mapping[str, Figure] = field(default_factory=dict)
    materials: tuple[Need, ...] = ()
    template: Template | None = None


@dataclass(frozen=True)
class Work:
    """What a fix comes to on this garment: its numbers by name, and the operations in order.

    `leaves` is how much of the finding's amount it cannot take, mm.
    """

    figures: Mapping[str, Figure]
    ops: tuple[Op, ...]
    leaves: Mm = Mm(0)


@dataclass(frozen=True)
class Finding:
    """Something wrong at a place: how much (mm) if it has an amount, and the sentence that says so."""

    id: FindingId
    problem: str
    title: str
    place: str
    stage: Stage
    amount: Mm | None
    words: str
    node: NodeId
    source: str


@dataclass(frozen=True)
class Ruling:
    """Why an option is ruled out: the sentence with the value seen, and its place in the trace."""

    rule: str
    words: str
    node: NodeId


@dataclass(frozen=True)
class Grades:
    """1 to 5 each: difficulty (5 hardest), durability (5 longest lasting), visibility (5 most obvious)."""

    difficulty: int
    durability: int
    visibility: int
    because: tuple[str, ...] = ()


@dataclass(frozen=True)
class Option:
    """A fix for a finding, sized. `reason` says why it answers this finding, `why` what the fix does.

    `rulings` not empty: ruled out. `dominated_by` not empty: another is at least as good on every axis.
    """

    id: OptionId
    finding: FindingId
    fix: FixId
    title: str
    reason: str
    why: str
    wrong_when: str
    source: str
    grades: Grades
    cautions: tuple[str, ...]
    work: Work
    closes: bool
    node: NodeId
    rulings: tuple[Ruling, ...] = ()
    dominated_by: OptionId = ""

    @property
    def open(self) -> bool:
        """Whether it may be chosen without going against a ruling."""
        return not self.rulings

    @cached_property
    def minutes(self) -> Spread:
        """Minutes of all its operations."""
        total = Spread(0, 0, 0)
        for op in self.work.ops:
            total = total + op.minutes
        return total
