"""The rule engine: facts with declared slots, rules, and runs that can say why.

Rules are written with experta's words, all given out here; nothing else in the advisor imports experta.
What they mean, where experta and CLIPS leave doubt:

    patterns          match facts of exactly their class. Two patterns may match the same fact.
    MATCH.x           binds x to a slot, or asks for the value it is bound to; ~MATCH.x for another value.
    AS.f << A(...)    binds f to the whole fact.
    P(test), L(word)  test one slot; combine them with & | ~. A test is asked only about facts whose
                      literals agree, so it sees values of its slot's type and no others.
    NOT, EXISTS       of several patterns: of all of them together, joined by their names. Names that occur
                      only inside stay inside. What binds a name must stand before.
    FORALL(a, b, ..)  for each a there are b, ..., joined with whatever was bound before.
    OR(a, b)          fires once for each branch that holds; facts concluded twice are one fact.
    TEST(f)           asks f for the bound names that its parameters are called.

A rule fires once for each way its conditions are met. Rules fire by layer, then id, then the order of their
facts. What is derived lasts as long as what it was derived from: if a NOT fails later, its conclusions go.
"""

from advisor.engine.core import Engine, Session
from advisor.engine.experta_shim import AND, AS, EXISTS, FORALL, MATCH, NOT, OR, TEST, L, P
from advisor.engine.facts import Slot, SlotFact
from advisor.engine.result import Firing, Run
from advisor.engine.rules import RuleSpec
from advisor.engine.whynot import NearMiss, SlotMiss, WhyNot, why_not

__all__ = [
    "AND", "AS", "EXISTS", "FORALL", "MATCH", "NOT", "OR", "TEST",
    "Engine", "Firing", "L", "NearMiss", "P", "RuleSpec", "Run", "Session", "Slot", "SlotFact", "SlotMiss",
    "WhyNot", "why_not",
]  # fmt: skip
