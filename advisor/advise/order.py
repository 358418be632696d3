"""The order of work: nothing is done before what it needs, and nothing undoes what was done.

What must come first follows from the operations themselves: who puts a state comes before who expects it;
who ends a state comes after all who expect it. Stages order the rest; among equals the machine keeps its set-up.
"""

from collections.abc import Mapping, Sequence
from graphlib import CycleError, TopologicalSorter

from advisor.core.model import Put
from advisor.core.stages import stage_index
from advisor.core.work import Op, OpId
from advisor.errors import KnowledgeError

KEPT = 1024
_known: dict[object, tuple[tuple[Op, ...], tuple[Op, ...]]] = {}


def ordered(ops: Sequence[Op], states: Mapping[str, str]) -> tuple[Op, ...]:
    """`ops` (distinct ids) in one order, from a garment with `states`. KnowledgeError names a cycle.

    Remembered by the very operations: a sweep meets the same ones again and again.
    """
    expected = tuple(states.get(put.key) for op in ops for put in op.expects)
    token = (tuple(id(op) for op in ops), expected)
    if token not in _known:
        if len(_known) >= KEPT:
            _known.clear()
        # The operations are kept beside their order, so that no other can take their identity.
        _known[token] = (tuple(ops), _ordered(ops, states))
    return _known[token][1]


def _ordered(ops: Sequence[Op], states: Mapping[str, str]) -> tuple[Op, ...]:
    by_id = {op.id: op for op in ops}
    before: dict[OpId, set[OpId]] = {op.id: {need for need in op.needs if need in by_id} for op in ops}
    for op in ops:
        for wanted in op.expects:
            for other in ops:
                if other.id == op.id:
                    continue
                if wanted in other.effects:
                    # Who makes the state comes first, unless it already is so and will be again.
                    if states.get(wanted.key) != wanted.word:
                        before[op.id].add(other.id)
                elif _ends(other, wanted) and not _ends(op, wanted):
                    before[other.id].add(op.id)
    return tuple(by_id[id] for id in _sorted(by_id, before))


def _ends(op: Op, state: Put) -> bool:
    """Whether `op` expects the state and leaves it."""
    return state in op.expects and any(
        isinstance(effect, Put) and effect.key == state.key and effect.word != state.word for effect in op.effects
    )


def _sorted(by_id: Mapping[OpId, Op], before: Mapping[OpId, set[OpId]]) -> list[OpId]:
    sorter = TopologicalSorter(before)
    try:
        sorter.prepare()
    except CycleError as fault:
        loop = " -> ".join(fault.args[1])
        raise KnowledgeError(f"operations wait for each other: {loop}", where="order of work") from fault
    result: list[OpId] = []
    ready: list[OpId] = []
    setup = ""
    while sorter.is_active() or ready:
        ready += sorter.get_ready()
        ready.sort(key=lambda id: (stage_index(by_id[id].stage), by_id[id].setup != setup, id))
        chosen = ready.pop(0)
        setup = by_id[chosen].setup
        result.append(chosen)
        sorter.done(chosen)
    return result
