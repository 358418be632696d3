"""Short ways to write the facts of an example, and lengths in a rule."""

from fractions import Fraction

from advisor.core.model import Mm, place_of, slot_of
from advisor.core.stages import Stage
from advisor.engine import P
from advisor.knowledge.facts import Joined, Measure, Offer, Problem, Trait
from advisor.lengths import read_length


def length(text: str) -> Mm:
    """A length written as on a tape ("1 1/2 in", "12 mm"), mm."""
    return read_length(text, unit="in")


def measure(key: str, role: str, text: str) -> Measure:
    """A measure of an example."""
    return Measure(key=key, place=place_of(key), role=role, slot=slot_of(key), mm=length(text))


def trait(key: str, role: str, word: str) -> Trait:
    """A state of an example."""
    return Trait(key=key, place=place_of(key), role=role, slot=slot_of(key), word=word)


def joined(
    kind: str,
    a: tuple[str, str],
    b: tuple[str, str],
    over: str,
    *,
    under: bool = False,
    relation: str = "equal",
    slack: str = "1/32 in",
) -> Joined:
    """A join of an example: `a` and `b` as (key, role); `a` is `over` longer than it should be, or `under` it."""
    mm = -length(over) if under else length(over)
    return Joined(
        id=f"{kind}:{a[0]}~{b[0]}",
        kind=kind,
        relation=relation,
        place=place_of(a[0]),
        role=a[1],
        slot=slot_of(a[0]),
        other=place_of(b[0]),
        other_role=b[1],
        over_mm=mm,
        slack_mm=length(slack),
    )


def problem(name: str, place: str, role: str, stage: Stage, text: str = "") -> Problem:
    """A finding of an example."""
    mm = length(text) if text else Fraction(0)
    return Problem(id=f"{name}@{place}", name=name, place=place, role=role, stage=stage, mm=mm)


def offered(name: str, place: str, role: str, fix: str) -> Offer:
    """An offer of an example."""
    return Offer(problem=f"{name}@{place}", name=name, fix=fix, place=place, role=role)


def one_of(*words: str) -> P:
    """A pattern for a word slot: any of these."""
    return P(frozenset(words).__contains__)
