"""What ways share: operations done once for several findings, bundled where the same ways take them."""

from dataclasses import dataclass

from advisor.advise.front.graph import Graph, Way
from advisor.core.case import FindingId
from advisor.core.work import OpId


@dataclass(frozen=True)
class Own:
    """A way's minutes and cuts that no other finding shares, and the numbers of the bundles it takes part in."""

    minutes: int
    cuts: int
    bundles: frozenset[int]


@dataclass(frozen=True)
class Bundle:
    """Operations that the same ways of several findings take: their minutes and cuts, and how many findings."""

    minutes: int
    cuts: int
    findings: int


class Bundles:
    """The bundles of a graph, the weightiest first, and each way's part in them.

    `varying`: shared operations that do not take all findings equally long, with the least minutes, which is what a
    bundle counts; what more it takes depends on which of the findings in `first` has it done first.
    """

    def __init__(self, graph: Graph) -> None:
        ways = dict.fromkeys(way for finding in graph.order for known in graph.known(finding) for way in known or ())
        numbers = {way: number for number, way in enumerate(ways)}
        users: dict[OpId, set[int]] = {}
        findings: dict[OpId, set[FindingId]] = {}
        minutes: dict[OpId, set[int]] = {}
        cuts: set[OpId] = set()
        for way, number in numbers.items():
            cuts |= way.cuts
            for op, count in way.ops:
                users.setdefault(op, set()).add(number)
                findings.setdefault(op, set()).add(way.finding)
                minutes.setdefault(op, set()).add(count)
        together: dict[frozenset[int], list[OpId]] = {}
        for op in sorted(users):
            if len(findings[op]) > 1:
                together.setdefault(frozenset(users[op]), []).append(op)
        bundles = [
            (Bundle(sum(min(minutes[op]) for op in ops), sum(op in cuts for op in ops), len(findings[ops[0]])), ops)
            for ops in together.values()
        ]
        bundles.sort(key=lambda each: (-each[0].minutes * each[0].findings, each[1]))
        self.all = tuple(bundle for bundle, _ in bundles)
        self._at = {op: number for number, (_, ops) in enumerate(bundles) for op in ops}
        self.varying = {op: min(minutes[op]) for op in self._at if len(minutes[op]) > 1}
        self.first = frozenset(finding for op in self.varying for finding in findings[op])
        self._own = {way: self._owned(way) for way in ways}

    def _owned(self, way: Way) -> Own:
        own = [(op, minutes) for op, minutes in way.ops if op not in self._at]
        return Own(
            sum(minutes for _, minutes in own),
            sum(op in way.cuts for op, _ in own),
            frozenset(self._at[op] for op, _ in way.ops if op in self._at),
        )

    def of(self, way: Way) -> Own:
        """A way's own minutes and cuts, and its bundles."""
        return self._own[way]
