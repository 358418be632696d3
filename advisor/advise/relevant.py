"""Which keys the present advice can depend on at all: a sound, cheap sieve before any sweep.

A key nothing reads cannot matter. What reads: joins, the conditions of finding rules, those of answers and
vetoes whose problem or fix is there, the sizing of the options, what their work expects, and the grades.
"""

from collections import defaultdict
from collections.abc import Iterator, Mapping

from advisor.advise.adapter import trait
from advisor.advise.kept import Kept
from advisor.advise.world import World
from advisor.core.advice import Advice
from advisor.core.model import Key, place_of, slot_of
from advisor.knowledge.cards import Answer, Veto
from advisor.rulebase.base import RuleBase
from advisor.rulebase.garment import Garment
from advisor.rulebase.reads import RoleSlot, measures_read

Readers = Mapping[Key, frozenset[str]]
# By the identity of the garment, which is kept beside it so that no other can take it.
_known: Kept[tuple[Garment, Readers]] = Kept(64)


def may_matter(base: RuleBase, world: World, advice: Advice, key: Key) -> bool:
    """Whether anything that decides or sizes the present advice reads `key`, or what is worked out from it."""
    return bool(fed_by(world, key) & readable(base, world, advice))


def fed_by(world: World, key: Key) -> frozenset[Key]:
    """`key` and every key whose value is taken or worked out from it, or means something only with it."""
    garment, found, grew = world.garment, {key}, True
    gates = [(k, {gate for gate, _ in garment.questions[k].after}) for k in world.given]
    while grew:
        # What was said to be as long as another is still worked out from that other.
        more = {k for k, start in garment.measures.items() if world.given.get(k, start) in found}
        more |= {k for k, ways in garment.reckoned.items() if any(t.key in found for way in ways for t in way)}
        more |= {other for k, other in garment.compared.items() if k in found}
        more |= {k for k, entry in garment.by_word.items() if entry.state in found}
        more |= {k for k, before in gates if before & found}
        grew = not more <= found
        found |= more
    return frozenset(found)


def readable(base: RuleBase, world: World, advice: Advice) -> frozenset[Key]:
    """The keys something in the present advice reads."""
    garment, places = world.garment, world.model.places
    concerned = _concerned(base, advice)
    keys = {key for key, rules in _readers(base, garment).items() if not rules.isdisjoint(concerned)}
    keys |= advice.reads
    keys |= {put.key for option in advice.options for op in option.work.ops for put in op.expects}
    for join, _ in garment.joins:
        keys |= {join.a, join.b, *(key for key, _ in join.when)}
    shape = base.grades.shape
    graded = {(shift.role, shift.slot) for shift in shape.shift} | {(cap.role, cap.slot) for cap in shape.cap}
    keys |= {key for key in garment.states if (places[place_of(key)].role, slot_of(key)) in graded}
    return frozenset(keys)


def _concerned(base: RuleBase, advice: Advice) -> frozenset[str]:
    """The rules that may say something: of answers and vetoes, those whose problem or fix is there."""
    problems = {finding.problem for finding in (*advice.findings, *advice.remains)}
    fixes = {option.fix for option in advice.options}
    return frozenset(
        id
        for id, card in base.rules.items()
        if not (isinstance(card, Answer) and card.problem not in problems)
        and not (isinstance(card, Veto) and card.fixes and fixes.isdisjoint(card.fixes))
    )


def _readers(base: RuleBase, garment: Garment) -> Readers:
    """For each key of a garment, the rules with a condition that some value of it, alone, may meet."""
    token = (base, id(garment))
    known = _known.get(token)
    if known is None:
        known = _known.put(token, (garment, dict(_all_readers(base, garment))))
    return known[1]


def _all_readers(base: RuleBase, garment: Garment) -> Iterator[tuple[Key, frozenset[str]]]:
    for key, start in garment.states.items():
        role, words = garment.places[place_of(key)].role, {start, *garment.allowed.get(key, ())}
        yield key, frozenset().union(*(base.engine.readers(trait(key, role, word)) for word in words))
    by_pair: dict[RoleSlot, set[str]] = defaultdict(set)
    for id, card in base.rules.items():
        for pair in measures_read(card):
            by_pair[pair].add(id)
    for key in garment.measures:
        role, slot = garment.places[place_of(key)].role, slot_of(key)
        pairs = ((role, slot), ("", slot), (role, ""), ("", ""))
        yield key, frozenset().union(*(by_pair.get(pair, ()) for pair in pairs))
