"""Two plans held against each other: what comes, what goes, what is another."""

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Protocol

from advisor.core.case import FindingId, FixId, Stood, Sums


class Outline(Protocol):
    """What two plans are compared by: how the findings stand, the steps by stage with their marks, the figures."""

    @property
    def findings(self) -> Mapping[FindingId, Stood]: ...

    @property
    def steps(self) -> Mapping[str, tuple[tuple[str, str], ...]]: ...

    @property
    def totals(self) -> Sums: ...


@dataclass(frozen=True)
class Moved:
    """How one finding stands otherwise. Fixes by id; `took` is (then, now), each "" where none was taken.

    `out`: might be taken then, ruled out now. `back`: the other way round. `comes` and `goes`: offered at all.
    `reranked`: those that might be taken then and now are in another order.
    """

    took: tuple[FixId, FixId]
    out: tuple[FixId, ...]
    back: tuple[FixId, ...]
    comes: tuple[FixId, ...]
    goes: tuple[FixId, ...]
    reranked: bool


@dataclass(frozen=True)
class Difference:
    """One plan, and another in its place."""

    then: Outline
    now: Outline

    @property
    def found(self) -> tuple[FindingId, ...]:
        """The findings that come, in order of work."""
        return tuple(id for id in self.now.findings if id not in self.then.findings)

    @property
    def closed(self) -> tuple[FindingId, ...]:
        """The findings that go."""
        return tuple(id for id in self.then.findings if id not in self.now.findings)

    @property
    def moved(self) -> Mapping[FindingId, Moved]:
        """The findings of both plans that stand otherwise, in order of work."""
        then, now = self.then.findings, self.now.findings
        both = {id: (then[id], now[id]) for id in now if id in then and then[id] != now[id]}
        return {id: _moved(one, two) for id, (one, two) in both.items()}

    @property
    def added(self) -> tuple[str, ...]:
        """The operations that come, in order of work."""
        then = marks(self.then)
        return tuple(id for id in marks(self.now) if id not in then)

    @property
    def dropped(self) -> tuple[str, ...]:
        """The operations that go, in their order of work."""
        now = marks(self.now)
        return tuple(id for id in marks(self.then) if id not in now)

    @property
    def changed(self) -> tuple[str, ...]:
        """The operations of both plans that say something else, numbers too, in order of work."""
        then, now = marks(self.then), marks(self.now)
        return tuple(id for id in now if id in then and now[id] != then[id])

    @property
    def reordered(self) -> bool:
        """Whether the operations of both plans come in another order."""
        then, now = marks(self.then), marks(self.now)
        return [id for id in then if id in now] != [id for id in now if id in then]

    @property
    def nothing(self) -> bool:
        """Whether the two are the same in all of this."""
        same = dict(self.then.findings) == dict(self.now.findings) and self.then.totals == self.now.totals
        return same and list(marks(self.then).items()) == list(marks(self.now).items())


def marks(plan: Outline) -> dict[str, str]:
    """The mark of each operation of a plan, in order of work."""
    return {id: mark for steps in plan.steps.values() for id, mark in steps}


def _moved(then: Stood, now: Stood) -> Moved:
    were, are = (*then.stood, *then.out), (*now.stood, *now.out)
    both = set(then.stood) & set(now.stood)
    return Moved(
        took=(then.took, now.took),
        out=tuple(fix for fix in then.stood if fix in now.out),
        back=tuple(fix for fix in now.stood if fix in then.out),
        comes=tuple(fix for fix in are if fix not in were),
        goes=tuple(fix for fix in were if fix not in are),
        reranked=[fix for fix in then.stood if fix in both] != [fix for fix in now.stood if fix in both],
    )
