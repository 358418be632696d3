"""The trace: every value, figure, rule and choice as a node with the nodes it came from.

why, why-not, footnotes and --json all print this, so none can tell another story.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import Literal

from advisor.core.work import NodeId

NodeKind = Literal["answer", "assumed", "value", "figure", "rule", "veto", "choice"]


@dataclass(frozen=True)
class Node:
    """One thing known: what kind it is, the words that tell it, what it came from, and its source or mark."""

    id: NodeId
    kind: NodeKind
    words: str
    parents: tuple[NodeId, ...] = ()
    source: str = ""


@dataclass(frozen=True)
class Trace:
    """All nodes by id. Parents always exist, and there is no cycle."""

    nodes: Mapping[NodeId, Node]

    def walk(self, root: NodeId, deep: int) -> Iterator[tuple[int, Node]]:
        """The nodes below `root` as (depth, node), parents after their child, each once, `deep` levels down."""
        seen: set[NodeId] = set()

        def down(id: NodeId, depth: int) -> Iterator[tuple[int, Node]]:
            if id in seen or depth > deep:
                return
            seen.add(id)
            node = self.nodes[id]
            yield depth, node
            for parent in node.parents:
                yield from down(parent, depth + 1)

        yield from down(root, 0)

    def leaves(self, root: NodeId) -> tuple[Node, ...]:
        """The answers and assumptions that `root` rests on, sorted by id."""
        found = {node.id: node for _, node in self.walk(root, 1000) if not node.parents}
        return tuple(found[id] for id in sorted(found))
