"""The option graph: which findings there are and which ways each has, by what was chosen for findings before it.

A finding is decided after all that may influence it. Its `cells` say, for each combination of choices for those
that do, which ways it then has; None where it is not there at all. A fix that opens a finding is an influence of it,
and so is one that only changes the amount another must take.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from advisor.core.case import FindingId, FixId
from advisor.core.work import OpId

Pick = tuple[FindingId, FixId]
Circumstances = tuple[FixId | None, ...]
"""What was chosen for each influence of a finding; None where that one is not there."""


@dataclass(frozen=True)
class Way:
    """A fix for a finding as the search sees it.

    `ops`: operations with their likely minutes (the first finding in order that has one done counts); `cuts`: those
    that cannot be undone; `things`: what to have at hand;
    `holes`: it takes a machine that makes buttonholes; `left`: 1 if the finding stays open, whole or in part.
    A way that leaves things as they are counts as easy, lasting and unseen. `rank` only breaks ties.
    """

    finding: FindingId
    fix: FixId
    difficulty: int
    durability: int
    visibility: int
    ops: tuple[tuple[OpId, int], ...]
    cuts: frozenset[OpId] = frozenset()
    things: frozenset[str] = frozenset()
    holes: bool = False
    left: int = 0
    rank: int = field(default=0, compare=False)

    @property
    def pick(self) -> Pick:
        """Its name: the finding and the fix."""
        return self.finding, self.fix


Ways = tuple[Way, ...]
Cells = dict[Circumstances, Ways | None]


class Graph:
    """A graph given whole. One that is explored as it is asked derives from it."""

    def __init__(
        self,
        order: Iterable[FindingId],
        influences: Mapping[FindingId, tuple[FindingId, ...]],
        cells: Mapping[FindingId, Cells],
        apart: Iterable[frozenset[Pick]] = (),
    ) -> None:
        self.order = tuple(order)
        self.influences = dict(influences)
        self.cells = dict(cells)
        self.apart = set(apart)

    def ways(self, finding: FindingId, chosen: Mapping[FindingId, FixId]) -> Ways | None:
        """The ways of a finding after these choices; None if it is not there, empty if nothing can be done."""
        return self.cells[finding][self.circumstances(finding, chosen)]

    def circumstances(self, finding: FindingId, chosen: Mapping[FindingId, FixId]) -> Circumstances:
        """What of `chosen` the finding hangs on."""
        return tuple([chosen.get(influence) for influence in self.influences[finding]])

    def known(self, finding: FindingId) -> Iterable[Ways | None]:
        """All that is known of a finding's ways, in whatever circumstances."""
        return self.cells[finding].values()

    def whole(self, finding: FindingId) -> bool:
        """Whether no other circumstances can come up than those in its cells."""
        return True
