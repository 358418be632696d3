"""What a rule file imports: the cards, the facts, the words for conditions and examples, and lengths.

A rule file takes everything from here, from `advisor.figures` (arithmetic) and from `advisor.operations` (work); one
with many names takes those for its examples from `advisor.knowledge.examples`.
"""

from advisor.core.model import Mm
from advisor.core.work import Work
from advisor.engine import MATCH, OR, L, P
from advisor.knowledge.cards import (
    Answer,
    Find,
    Veto,
    fires,
    given,
    near,
    near_with,
    near_without,
    such_that,
    unless,
)
from advisor.knowledge.examples import joined, length, measure, offered, one_of, problem, trait
from advisor.knowledge.facts import Joined, Measure, Offer, Problem, Trait
from advisor.knowledge.fix import Fix, nothing_to_do, work_of
from advisor.knowledge.view import Trouble, View, amount, plain

__all__ = [
    "MATCH", "OR", "Answer", "Find", "Fix", "Joined", "L", "Measure", "Mm", "Offer", "P", "Problem",
    "Trait", "Trouble", "Veto", "View", "Work", "amount", "fires", "given", "joined", "length", "measure",
    "near", "near_with", "near_without", "nothing_to_do", "offered", "one_of", "plain", "problem", "such_that",
    "trait", "unless", "work_of",
]  # fmt: skip
