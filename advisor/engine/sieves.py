"""TESTs that speak of one fact alone, asked of each fact before anything is joined.

A sieve only shuts facts out. What it lets pass, and what it cannot answer, is asked again where the TEST
stands; so a TEST may rely on the conditions above it, and fails, if it fails, in its own place.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from advisor.engine.facts import SlotFact
from advisor.engine.shape import Item, Pattern, Test


class Sieve:
    """A TEST whose names are all slots of one pattern."""

    __slots__ = ("_function", "_slots")

    def __init__(self, test: Test, slots: dict[str, str]) -> None:
        self._function = test.function
        self._slots = tuple((name, slots[name]) for name in test.names)

    def __call__(self, fact: SlotFact) -> bool:
        """Whether the TEST can hold with this fact."""
        try:
            return bool(self._function(**{name: fact[slot] for name, slot in self._slots}))
        except Exception:
            return True


def sieved(items: Sequence[Item]) -> tuple[Item, ...]:
    """The conditions of one alternative, each pattern with the sieves of the TESTs below it."""
    found: list[Item] = []
    for item in items:
        if isinstance(item, Test):
            at = next((at for at, pattern in enumerate(found) if _binds(pattern, item)), None)
            if at is not None:
                pattern = found[at]
                assert isinstance(pattern, Pattern)
                sieve = Sieve(item, {name: slot for slot, name in pattern.names})
                found[at] = replace(pattern, sieves=(*pattern.sieves, sieve))
        found.append(item)
    return tuple(found)


def _binds(item: Item, test: Test) -> bool:
    return isinstance(item, Pattern) and {*test.names} <= {name for _, name in item.names}
