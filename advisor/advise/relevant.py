"""Which keys the present advice can depend on at all: a sound, cheap sieve before any sweep.

A key nothing reads cannot matter. What reads: joins, the conditions of finding rules, those of answers and
vetoes whose problem or fix is there, the sizing of the options, and the grades.
"""

from advisor.advise.world import World
from advisor.core.advice import Advice
from advisor.core.model import Key, place_of, slot_of
from advisor.knowledge.cards import Answer, Veto
from advisor.rulebase.base import RuleBase
from advisor.rulebase.reads import RoleSlot, looked_at, slots_read


def may_matter(base: RuleBase, world: World, advice: Advice, key: Key) -> bool:
    """Whether anything that decides or sizes the present advice reads `key`, or what is worked out from it."""
    return bool(fed_by(world, key) & readable(base, world, advice))


def fed_by(world: World, key: Key) -> frozenset[Key]:
    """`key` and every key whose value is taken or worked out from it, or means something only with it."""
    garment, found, grew = world.garment, {key}, True
    gates = [(k, {gate for gate, _ in garment.questions[k].after}) for k in world.given]
    while grew:
        more = {k for k, start in garment.measures.items() if start in found and k not in world.given}
        more |= {k for k, ways in garment.reckoned.items() if any(t.key in found for way in ways for t in way)}
        more |= {other for k, other in garment.compared.items() if k in found}
        more |= {k for k, entry in garment.by_word.items() if entry.state in found}
        more |= {k for k, before in gates if before & found}
        grew = not more <= found
        found |= more
    return frozenset(found)


def readable(base: RuleBase, world: World, advice: Advice) -> frozenset[Key]:
    """The keys something in the present advice reads."""
    problems = {finding.problem for finding in (*advice.findings, *advice.remains)}
    fixes = {option.fix for option in advice.options}
    wanted: set[RoleSlot] = set()
    for card in base.rules.values():
        if isinstance(card, Answer) and card.problem not in problems:
            continue
        if isinstance(card, Veto) and card.fix and card.fix not in fixes:
            continue
        wanted |= slots_read(card)
    wanted |= {(entry.role, entry.slot) for entry in base.grades.shape.shift}
    wanted |= {(entry.role, entry.slot) for entry in base.grades.shape.cap}
    keys, all_wanted = set(advice.reads), frozenset(wanted)
    for join, _ in world.garment.joins:
        keys |= {join.a, join.b, *(key for key, _ in join.when)}
    for key in (*world.model.measures, *world.model.states):
        if looked_at(world.model.places[place_of(key)].role, slot_of(key), all_wanted):
            keys.add(key)
    return frozenset(keys)
