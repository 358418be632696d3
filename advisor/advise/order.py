"""The order of work: nothing is done before what it needs, and nothing undoes what was done.

What must come first follows from the operations themselves: who puts a state comes before who expects it;
who ends a state comes after all who expect it. Stages order the rest; among equals the machine keeps its set-up.
"""

from collections import defaultdict
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from graphlib import CycleError, TopologicalSorter

from advisor.advise.kept import Kept, Numbers
from advisor.core.model import Put
from advisor.core.stages import stage_index
from advisor.core.work import Op, OpId
from advisor.errors import KnowledgeError

KEPT = 1024


@dataclass(frozen=True)
class _Shape:
    """What the order depends on in an operation: all but its words and amounts."""

    id: OpId
    stage: int
    setup: str
    needs: tuple[OpId, ...]
    expects: tuple[Put, ...]
    puts: frozenset[Put]

    def ends(self, state: Put) -> bool:
        """Whether the operation expects the state and leaves it."""
        return state in self.expects and any(put.key == state.key and put.word != state.word for put in self.puts)


@dataclass(frozen=True)
class _Numbered:
    """A shape by its number. `op` is kept so that no other operation can take its identity."""

    op: Op
    shape: _Shape
    number: int


@dataclass(frozen=True)
class _Order:
    """Operations by their places in the list; and whether, so done, some cannot be."""

    places: tuple[int, ...]
    hindered: bool


# Worlds that differ in an amount have the same operations in other objects, and the same order.
_numbers = Numbers(4 * KEPT)
_shapes: Kept[_Numbered] = Kept(4 * KEPT)
_orders: Kept[_Order] = Kept(KEPT)


class Loop(KnowledgeError):
    """Operations that wait for each other: the ids, the first again at the end."""

    def __init__(self, ops: Sequence[OpId]) -> None:
        super().__init__(f"operations wait for each other: {' -> '.join(ops)}", where="order of work")
        self.ops = tuple(ops)


def ordered(ops: Sequence[Op], states: Mapping[str, str]) -> tuple[Op, ...]:
    """`ops` (distinct ids) in one order, from a garment with `states`. KnowledgeError names a cycle."""
    return tuple(ops[at] for at in _order_of(ops, states).places)


def hindered(ops: Sequence[Op], states: Mapping[str, str]) -> bool:
    """Whether, done in order, some of these find a state they expect gone, or there is no order at all."""
    try:
        return _order_of(ops, states).hindered
    except KnowledgeError:
        return True


def _order_of(ops: Sequence[Op], states: Mapping[str, str]) -> _Order:
    known = [_shapes.get(id(op)) or _numbered(op) for op in ops]
    token = (
        tuple([each.number for each in known]),
        tuple([states.get(put.key) for each in known for put in each.shape.expects]),
    )
    return _orders.get(token) or _orders.put(token, _ordered([each.shape for each in known], states))


def _numbered(op: Op) -> _Numbered:
    puts = frozenset(effect for effect in op.effects if isinstance(effect, Put))
    shape = _Shape(op.id, stage_index(op.stage), op.setup, op.needs, op.expects, puts)
    return _shapes.put(id(op), _Numbered(op, shape, _numbers.of(shape)))


def _ordered(shapes: Sequence[_Shape], states: Mapping[str, str]) -> _Order:
    places = tuple(_sorted(shapes, _before(shapes, states)))
    now, hindered = dict(states), False
    for shape in (shapes[at] for at in places):
        if all(now.get(put.key) == put.word for put in shape.expects):
            now.update((put.key, put.word) for put in shape.puts)
        else:
            hindered = True
    return _Order(places, hindered)


def _before(shapes: Sequence[_Shape], states: Mapping[str, str]) -> dict[int, set[int]]:
    """For each operation, by its place in the list, those that must be done first."""
    places = {shape.id: at for at, shape in enumerate(shapes)}
    making: dict[Put, list[int]] = defaultdict(list)
    expecting: dict[Put, list[int]] = defaultdict(list)
    for at, shape in enumerate(shapes):
        for put in shape.puts:
            making[put].append(at)
        for put in dict.fromkeys(shape.expects):
            expecting[put].append(at)
    before = {at: {places[need] for need in shape.needs if need in places} for at, shape in enumerate(shapes)}
    for wanted, those in expecting.items():
        makers = making.get(wanted, [])
        ending = [at for at in those if at not in makers and shapes[at].ends(wanted)]
        for at in those:
            # Who makes the state comes first, unless it already is so and will be again.
            if states.get(wanted.key) != wanted.word:
                before[at].update(_awaited(at, makers, shapes))
            if not shapes[at].ends(wanted):
                for last in ending:
                    before[last].add(at)
    return before


def _awaited(at: int, makers: Sequence[int], shapes: Sequence[_Shape]) -> list[int]:
    """Those that make the state one waits for: a seam opened again at a later stage is not what it waits for."""
    others = [maker for maker in makers if maker != at]
    return [maker for maker in others if shapes[maker].stage <= shapes[at].stage] or others


def _sorted(shapes: Sequence[_Shape], before: Mapping[int, set[int]]) -> list[int]:
    sorter = TopologicalSorter(before)
    try:
        sorter.prepare()
    except CycleError as fault:
        raise Loop([shapes[at].id for at in fault.args[1]]) from fault
    result: list[int] = []
    ready: list[int] = []
    setup = ""
    while sorter.is_active() or ready:
        ready += sorter.get_ready()
        ready.sort(key=lambda at: (shapes[at].stage, shapes[at].setup != setup, shapes[at].id))
        chosen = ready.pop(0)
        setup = shapes[chosen].setup
        result.append(chosen)
        sorter.done(chosen)
    return result
